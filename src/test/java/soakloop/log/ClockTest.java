package soakloop.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Times of day as loggers write them. */
class ClockTest {
  @ParameterizedTest
  @CsvSource({
    "14:05:02, 50702",
    "14:05:02.120, 50702.12",
    "2:05:02 PM, 50702",
    "12:00:01 AM, 1",
    "12:00:01 PM, 43201",
    "05:02.1, 302.1",
    "01.05.2026 14:05:02, 50702",
    "5/1/2026 2:05:02.5 pm, 50702.5",
    "14:05:02:500, 50702.5",
  })
  void readsATimeOfDay(String text, double seconds) {
    assertEquals(seconds, seconds(Clock.of(text).orElseThrow()), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2026-05-01T14:05:02.123Z",
        "2026-05-01T14:05:02+02:00",
        "2024-02-29T23:59:59.999999-05:30"
      })
  @Tag("library") // java.time.OffsetDateTime of the Java platform
  void readsIsoAsThePlatformDoes(String text) {
    Clock clock = Clock.of(text).orElseThrow();
    OffsetDateTime wanted = OffsetDateTime.parse(text);
    double since = clock.day() * 86_400.0 + seconds(clock);
    assertEquals(wanted.toEpochSecond() + wanted.getNano() * 1e-9, since, 1e-6);
  }

  @ParameterizedTest
  @ValueSource(strings = {"14:65:02", "2026-02-30T00:00:00", ":", "12:00:99", "a:b:c"})
  void refusesWhatIsNone(String text) {
    assertTrue(Clock.of(text).isEmpty());
  }

  private static double seconds(Clock clock) {
    return clock.mantissa() / Math.pow(10, clock.decimals());
  }
}
