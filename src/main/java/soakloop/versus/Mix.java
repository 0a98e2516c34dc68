package soakloop.versus;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * Which case each part of a scenario comes from.
 *
 * @param cases index of the case by part; all parts
 */
record Mix(Map<Origin, Integer> cases) {
  Mix {
    cases = Collections.unmodifiableMap(new EnumMap<>(cases));
  }

  /** Everything of one case. */
  static Mix all(int inCase) {
    Map<Origin, Integer> cases = new EnumMap<>(Origin.class);
    Arrays.stream(Origin.values()).forEach(o -> cases.put(o, inCase));
    return new Mix(cases);
  }

  /** Returns the same with a part of another case. */
  Mix with(Origin origin, int inCase) {
    Map<Origin, Integer> changed = new EnumMap<>(cases);
    changed.put(origin, inCase);
    return new Mix(changed);
  }

  /** Returns the case that a part comes from. */
  int of(Origin origin) {
    return cases.getOrDefault(origin, 0);
  }
}
