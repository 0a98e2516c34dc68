package soakloop.reading;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import soakloop.invented.Outing.TruePull;

/** Pulls found in invented sessions, against the pulls that were asked for. */
class PullFinderTest {
  static List<InventedSessions.Session> sessions() {
    return InventedSessions.all();
  }

  @ParameterizedTest
  @MethodSource("sessions")
  @Tag("analytic")
  void allPullsAreFoundAndNoneInvented(InventedSessions.Session session) {
    List<Pull> found = PullFinder.find(Channels.of(session.log()));
    List<TruePull> truth = session.outing().pulls();
    String seen =
        found.stream().map(p -> p.start() + ".." + p.end()).toList()
            + " for "
            + truth.stream().map(p -> p.start() + ".." + p.end()).toList();
    assertEquals(truth.size(), found.size(), seen);
    assertAll(
        IntStream.range(0, truth.size())
            .mapToObj(
                i ->
                    () -> {
                      TruePull t = truth.get(i);
                      Pull p = found.get(i);
                      assertEquals(t.start(), p.start(), session.within(), "start " + (i + 1));
                      assertEquals(t.end(), p.end(), session.within(), "end " + (i + 1));
                      assertEquals(t.aborted(), p.aborted(), "aborted " + (i + 1));
                      Pull.Sweep sweep = p.sweep().orElseThrow();
                      double rpm = 450 * session.within();
                      assertEquals(t.from(), sweep.from() * 60, rpm, "from " + (i + 1));
                      assertEquals(t.to(), sweep.to() * 60, rpm, "to " + (i + 1));
                    }));
  }
}
