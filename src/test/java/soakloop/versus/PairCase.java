package soakloop.versus;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import soakloop.fit.FitCase;
import soakloop.fit.FitException;
import soakloop.invented.ShopDay;
import soakloop.scenario.ScenarioException;
import soakloop.scenario.ScenarioReader;
import soakloop.study.StudyException;

/**
 * Two cores on one invented car, what a comparison said of them, and what is true.
 *
 * @param seed of the day
 * @param style of the logger
 * @param ratio conductance of the second core over that of the first
 * @param truth true charge at the counted end with the second less with the first, under the
 *     conditions of the one that started hotter, K
 * @param low lower end of the 90 % interval said, K
 * @param middle said, K
 * @param high upper end, K
 * @param better probability said that the second is better
 * @param verdict on the second
 */
record PairCase(
    long seed,
    String style,
    double ratio,
    double truth,
    double low,
    double middle,
    double high,
    double better,
    VersusResult.Verdict verdict) {
  /** Most that a drawn core differs by, as a logarithm of its conductance. */
  private static final double WIDEST = 0.3;

  /**
   * Draws cores by a seed: every fourth pair is of equal cores, every fourth of one that is 20 %
   * better, the others are drawn evenly over the logarithm of their ratio.
   */
  static double ratio(long seed) {
    return switch ((int) (seed % 4)) {
      case 0 -> 1;
      case 1 -> 1.2;
      default ->
          Math.exp(
              WIDEST
                  * (2 * new Random(seed * 0x9E3779B97F4A7C15L ^ 0x5DEECE66DL).nextDouble() - 1));
    };
  }

  /** Draws a pair and compares it as a shop would. */
  static PairCase of(long seed, Path folder)
      throws IOException, ScenarioException, FitException, StudyException {
    // Seeds of days alternate the logger; those of pairs must not go with their kind.
    ShopDay one = ShopDay.draw(20_000 + seed / 4 + (seed % 4) * 1000);
    double ratio = ratio(seed);
    ShopDay other = one.swapped(ratio, Math.sqrt(ratio));
    VersusPlan plan =
        new VersusPlan(
            List.of(
                contender("first", seed, one, folder), contender("second", seed, other, folder)),
            List.of("core"),
            Optional.empty(),
            PullFigure.END,
            0,
            0.95,
            VersusPlan.USUAL_DRAWS,
            1);
    Versus.Judgement said = Versus.judged(plan).get(0);
    ShopDay conditions = one.startsHotter(other) ? one : other;
    double truth = other.chargeUnder(conditions) - one.chargeUnder(conditions);
    return new PairCase(
        seed,
        one.style(),
        ratio,
        truth,
        said.difference().by().low(),
        said.difference().by().middle(),
        said.difference().by().high(),
        said.difference().better(),
        said.verdict());
  }

  private static Contender contender(String label, long seed, ShopDay day, Path folder)
      throws IOException, ScenarioException, FitException {
    String log = "pair-" + seed + "-" + label + ".csv";
    Files.writeString(folder.resolve(log), day.log());
    return new Contender(
        label, List.of(FitCase.of(label, ScenarioReader.parse(label, day.scenario(log), folder))));
  }

  boolean isEqual() {
    return ratio == 1;
  }

  boolean covers() {
    return truth >= low && truth <= high;
  }

  /** Returns it as a line of a file of comma-separated values. */
  String line() {
    return String.format(
        Locale.ROOT,
        "%d,%s,%.5f,%.4f,%.4f,%.4f,%.4f,%.5f,%s",
        seed,
        style,
        ratio,
        truth,
        low,
        middle,
        high,
        better,
        verdict.name().toLowerCase(Locale.ROOT));
  }

  static String header() {
    return "seed,logger,conductance ratio,true difference [K],low [K],middle [K],high [K],"
        + "probability better,verdict";
  }

  static PairCase of(String line) {
    String[] c = line.split(",");
    return new PairCase(
        Long.parseLong(c[0]),
        c[1],
        Double.parseDouble(c[2]),
        Double.parseDouble(c[3]),
        Double.parseDouble(c[4]),
        Double.parseDouble(c[5]),
        Double.parseDouble(c[6]),
        Double.parseDouble(c[7]),
        VersusResult.Verdict.valueOf(c[8].toUpperCase(Locale.ROOT)));
  }
}
