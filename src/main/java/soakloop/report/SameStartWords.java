package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import soakloop.plan.SameStartAnswer;
import soakloop.plan.Window;
import soakloop.quantity.Dimension;

/**
 * What is said of pulls that must start alike.
 *
 * @param answer what a plan gave
 * @param display how numbers are shown
 */
record SameStartWords(SameStartAnswer answer, Display display) {
  private WaitWords waits() {
    return new WaitWords(display);
  }

  String within() {
    return display.fineSize(answer.plan().within());
  }

  private String share() {
    return waits().percent(answer.plan().confidence());
  }

  /** Returns what the pulls that count are called. */
  String counted() {
    int warm = answer.plan().warmUps();
    String pulls = answer.plan().pulls() + " pulls";
    return warm == 0 ? pulls : pulls + " after " + warm + (warm == 1 ? " warm-up" : " warm-ups");
  }

  /** Returns the answer. */
  Answer answered() {
    List<String> sentences = new ArrayList<>();
    answer
        .best()
        .ifPresentOrElse(
            best -> {
              SameStartAnswer.Apart first = best.first().orElseThrow();
              sentences.add(
                  Display.sentenceStart(
                      "pull every "
                          + waits().from(best.windows().get(0))
                          + " (from one pull's end to the next one's start), "
                          + waits().way(best.way())
                          + ": then "
                          + counted()
                          + " start within "
                          + within()
                          + " of one another, coolant into the core and charge sensor, in "
                          + share()
                          + " of equally likely cars."));
              sentences.add(then(first));
            },
            () -> {
              SameStartAnswer.OfWay near = nearest();
              sentences.add(
                  "No interval up to "
                      + Display.clock(answer.plan().horizon())
                      + " makes "
                      + counted()
                      + " start within "
                      + within()
                      + " of one another. Nearest comes "
                      + waits().way(near.way())
                      + " at "
                      + Display.clock(near.least().seconds())
                      + ": coolant within "
                      + display.fineSize(near.least().coolant())
                      + ", sensor within "
                      + display.fineSize(near.least().sensor())
                      + ".");
              sentences.add(
                  answer.plan().warmUps() == 0
                      ? "The first pull starts from where the session does; leave it out with"
                          + " --warm-ups 1, or bring the loop to where the others start."
                      : "Ask for more with --within, or for a longer --horizon.");
            });
    double seconds =
        answer
            .best()
            .flatMap(SameStartAnswer.OfWay::first)
            .map(SameStartAnswer.Apart::seconds)
            .orElse(Double.NaN);
    return new Answer(
        Double.isFinite(seconds) ? Display.clock(5 * Math.ceil(seconds / 5)) : "never",
        "",
        sentences);
  }

  private SameStartAnswer.OfWay nearest() {
    SameStartAnswer.OfWay nearest = answer.ways().get(0);
    for (SameStartAnswer.OfWay way : answer.ways()) {
      nearest = way.least().start() < nearest.least().start() ? way : nearest;
    }
    return nearest;
  }

  private String then(SameStartAnswer.Apart first) {
    String charge =
        "The true charge at the counted end then differs by up to "
            + display.fineSize(first.end())
            + " from pull to pull";
    return Double.isFinite(first.power())
        ? charge
            + ", power at the crank by up to "
            + String.format(Locale.ROOT, "%.1f %%", 100 * first.power())
            + "."
        : charge
            + "; what that is in power needs `power` in the scenario, and `spark` if the calibration"
            + " takes any out.";
  }

  /** Returns each way with its first window and what pulls are apart by then. */
  Table ways() {
    List<List<String>> rows = new ArrayList<>();
    for (SameStartAnswer.OfWay way : answer.ways()) {
      SameStartAnswer.Apart at = way.first().orElseGet(way::least);
      boolean never = way.windows().isEmpty();
      Window first = never ? new Window(at.seconds(), at.seconds(), false) : way.windows().get(0);
      rows.add(
          List.of(
              Display.sentenceStart(waits().brief(way.way())),
              never ? "never" : waits().from(first),
              never ? Display.NOTHING : waits().to(first) + (first.open() ? " +" : ""),
              difference(at.coolant()),
              difference(at.sensor()),
              difference(at.end()),
              Double.isFinite(at.power())
                  ? String.format(Locale.ROOT, "%.1f %%", 100 * at.power())
                  : Display.NOTHING));
    }
    String unit = ", " + display.symbol(Dimension.TEMPERATURE_DIFFERENCE);
    return new Table(
        List.of("Way of waiting", "Every", "Up to", "Coolant" + unit, "Sensor", "End", "Power"),
        rows,
        1,
        6);
  }

  private String difference(double kelvin) {
    return display.number(kelvin, Dimension.TEMPERATURE_DIFFERENCE, 1);
  }
}
