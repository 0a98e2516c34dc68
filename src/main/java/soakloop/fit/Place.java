package soakloop.fit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntFunction;
import org.hipparchus.linear.RealVector;
import soakloop.log.Signal;

/** One car, or several that share parts, as they may be: a value for every key that moves. */
public final class Place {
  private final List<FitKey> keys;
  private final RealVector place;
  private final double[] others;

  /**
   * Makes it.
   *
   * @param keys what moves
   * @param place of each key, in standard deviations of what was believed
   * @param others further independent standard normal numbers
   */
  Place(List<FitKey> keys, RealVector place, double... others) {
    this.keys = keys;
    this.place = place;
    this.others = others;
  }

  /**
   * Returns what a scenario is given for it.
   *
   * @param whose index of the case that a path of the scenario comes from
   * @return values by path, as {@code Scenario.with} takes them
   */
  public Map<String, String> changes(ToIntFunction<String> whose) {
    Map<String, String> changes = new LinkedHashMap<>();
    for (int k = 0; k < keys.size(); k++) {
      FitKey key = keys.get(k);
      if (key.role() instanceof Role.OfScenario) {
        for (FitKey.Part part : key.parts()) {
          if (whose.applyAsInt(part.path()) == part.inCase()) {
            changes.put(part.path(), Written.of(part.at(place.getEntry(k)), key.dimension()));
          }
        }
      }
    }
    return changes;
  }

  /**
   * Returns by how much the charge sensor of a case reads high, K.
   *
   * @param inCase index of the case
   */
  public double bias(int inCase) {
    Role bias = new Role.Bias(Signal.CHARGE_TEMPERATURE);
    for (int k = 0; k < keys.size(); k++) {
      if (keys.get(k).moves(inCase, bias)) {
        return keys.get(k).value(place.getEntry(k));
      }
    }
    return 0;
  }

  /**
   * Returns a further standard normal number that goes with it.
   *
   * @param which counted from 0
   */
  public double other(int which) {
    return others[which];
  }
}
