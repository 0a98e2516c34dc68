package soakloop.report;

import java.util.Optional;
import soakloop.fit.Band;
import soakloop.fit.BandedRun;
import soakloop.fit.PullNumber;
import soakloop.fit.RunBands;
import soakloop.quantity.Dimension;
import soakloop.simulate.Channel;
import soakloop.study.PullResult;

/**
 * Says how well a run's numbers are known.
 *
 * @param run what it is about
 * @param display how numbers are shown
 */
record BandWords(BandedRun run, Display display) {
  /** Returns the sentence of an answer, if bands are known. */
  Optional<String> sentence() {
    return run.bands().flatMap(this::sentence);
  }

  private Optional<String> sentence(RunBands bands) {
    int last = run.outcome().pulls().size() - 1;
    if (last < 0) {
      Band end = bands.courses().get(Channel.SENSOR).get(bands.times().size() - 1);
      return Double.isFinite(end.middle())
          ? Optional.of("Nine in ten cars like this have the sensor at " + range(end) + " then.")
          : Optional.empty();
    }
    PullResult pull = run.outcome().pulls().get(last);
    return Optional.ofNullable(bands.pulls().get(last).numbers().get(PullNumber.SENSOR_END))
        .map(end -> "Nine in ten cars like this end " + pull.name() + " at " + range(end) + ".");
  }

  private String range(Band band) {
    return display.number(band.low(), Dimension.TEMPERATURE, 0)
        + " to "
        + display.temperature(band.high());
  }

  /** Returns what the bands stand for. */
  static String note(RunBands bands) {
    String hang =
        bands.correlated()
            ? ", drawn as the fit left them"
            : ", each drawn by itself: a fit to a log makes the bands narrower";
    String error =
        bands.ownError()
            ? "The model's own error and the sensor's, as the fit found them, are in them."
            : "The usual error of model (0.8 K, one standard deviation) and sensor (2 K, nine in"
                + " ten) is in them.";
    String lost =
        bands.lost() == 0 ? "" : " " + bands.lost() + " more could not run and are left out.";
    return "Bands and \u00b1 are 90 % intervals of "
        + bands.draws()
        + " equally likely cars: all "
        + bands.keys()
        + " keys with a spread move together, assumed ones too"
        + hang
        + ". "
        + error
        + lost;
  }
}
