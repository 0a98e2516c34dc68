package soakloop.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.quantity.UnitSystem;

/** The console's text must fit a console. */
@Tag("analytic")
class TextSummaryTest {
  @Test
  void everyLineFitsEightyColumnsOfAscii() {
    String longWord = "x".repeat(200);
    for (SampleOutcome sample :
        List.of(
            SampleOutcome.standard(),
            SampleOutcome.standard().in(UnitSystem.US),
            SampleOutcome.standard().pulls(0),
            SampleOutcome.standard().pulls(12).withoutLog(),
            SampleOutcome.standard().titled("A " + longWord))) {
      String text = TextSummary.of(sample.make());
      assertTrue(text.lines().allMatch(l -> l.length() <= TextSummary.COLUMNS), text);
      assertTrue(text.chars().allMatch(c -> c == '\n' || (c >= ' ' && c < 127)), text);
      assertTrue(text.endsWith("\n"));
    }
  }

  @Test
  void pullTableHasARowForEachPull() {
    String text = TextSummary.of(SampleOutcome.standard().make());
    List<String> lines = text.lines().toList();
    int head =
        lines.indexOf("Pull  Start   End  Peak   Rise  Over limit  Coolant in  Logged end  Error");
    assertTrue(head > 0, text);
    for (int i = 1; i <= 5; i++) {
      assertTrue(lines.get(head + i).startsWith(String.valueOf(i)), text);
    }
  }

  @Test
  void wordsAreKeptWhole() {
    List<String> lines = TextSummary.wrapped("word ".repeat(40));
    assertEquals(3, lines.size());
    assertTrue(lines.stream().allMatch(l -> l.matches("(word ?)+")), lines.toString());
  }
}
