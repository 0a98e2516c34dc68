package soakloop.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import soakloop.log.Signal;

/** Says what a reader should know of a fit before leaning on it. */
final class Cautions {
  /** Root mean square of the charge sensor from which on a fit is poor, K. */
  private static final double POOR = 3;

  private Cautions() {}

  static List<String> of(
      List<KeyNews> news, List<FitResult.SignalFit> signals, FitResult.Effort effort) {
    List<String> cautions = new ArrayList<>();
    for (FitResult.SignalFit signal : signals) {
      if (signal.signal() == Signal.CHARGE_TEMPERATURE && signal.after() > POOR) {
        cautions.add(
            String.format(
                Locale.ROOT,
                "The fit of %s is poor: the charge sensor is still typically %.1f K off. See whether"
                    + " session, boost and start are what the log shows.",
                signal.label(),
                signal.after()));
      }
    }
    String moved = names(news, KeyNews::isSurprise);
    if (!moved.isEmpty()) {
      cautions.add(
          "Moved much further than its stated spread allows for: "
              + moved
              + ". Either it was stated wrongly, or it makes up for something that the model lacks:"
              + " measure it.");
    }
    String bound = names(news, KeyNews::isAtBound);
    if (!bound.isEmpty()) {
      cautions.add(
          "Ended at a bound of what is allowed: "
              + bound
              + ". The log asks for more than a real part has, so something else is wrong.");
    }
    if (!effort.settled()) {
      cautions.add("The search ran out of patience; give fewer keys or a better start.");
    }
    if (effort.rivals() > 0) {
      cautions.add(
          "Other values of the keys explain the log nearly as well; the intervals hold for the"
              + " likeliest only.");
    }
    return cautions;
  }

  private static String names(List<KeyNews> news, Predicate<KeyNews> which) {
    return String.join(", ", news.stream().filter(which).map(k -> k.key().name()).toList());
  }
}
