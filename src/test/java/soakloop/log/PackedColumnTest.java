package soakloop.log;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A column in little memory gives back what the language's own parser reads from the text. */
class PackedColumnTest {
  @RepeatedTest(40)
  @Tag("library") // Double.parseDouble of the Java platform: the double nearest to the text
  void givesBackTheDoubleNearestToTheText(RepetitionInfo repetition) {
    Random random = new Random(repetition.getCurrentRepetition());
    PackedColumn.Builder builder = new PackedColumn.Builder();
    NumberScanner scanner = new NumberScanner();
    int rows = 1 + random.nextInt(4000);
    double[] wanted = new double[rows];
    long spread = (long) Math.pow(10, random.nextInt(15));
    int places = random.nextInt(7);
    for (int i = 0; i < rows; i++) {
      int kind = random.nextInt(12);
      if (kind == 0) {
        wanted[i] = Double.NaN;
        builder.addMissing();
      } else if (kind == 1) {
        wanted[i] = random.nextGaussian() * spread;
        builder.add(wanted[i]);
      } else {
        long digits = (long) ((random.nextDouble() - 0.3) * spread);
        String text = digits + "." + "0123456".substring(0, places);
        char[] chars = text.toCharArray();
        wanted[i] = Double.parseDouble(text);
        assertEquals(chars.length, scanner.end(chars, 0, chars.length, '.'));
        builder.add(scanner.mantissa, scanner.decimals);
      }
      if (random.nextInt(50) == 0) {
        builder.add(1, 2);
        builder.dropLast();
      }
    }
    PackedColumn column = builder.build();
    assertEquals(rows, column.size());
    for (int i = 0; i < rows; i++) {
      assertEquals(wanted[i], column.at(i), "row " + i);
    }
  }

  @Test
  void boundsAreTheOutermostValues() {
    PackedColumn.Builder builder = new PackedColumn.Builder();
    builder.add(25, 1);
    builder.add(-3, 0);
    builder.addMissing();
    builder.add(1e300);
    PackedColumn column = builder.build();
    assertEquals(-3, column.lowest());
    assertEquals(1e300, column.highest());
  }
}
