package soakloop.versus;

import soakloop.quantity.Dimension;

/** What ought to be alike between two sets of pulls. */
public enum ConditionKind {
  /** Coolant and metal of the loop as the session starts. */
  LOOP_START("loop temperature at the start", Dimension.TEMPERATURE, 3) {
    @Override
    Setting moved(double by) {
      return Setting.warmerStart(label(), by);
    }
  },
  /** Engine coolant as the session starts. */
  ENGINE_COOLANT("engine coolant at the start", Dimension.TEMPERATURE, 5) {
    @Override
    Setting moved(double by) {
      return Setting.warmerEngine(label(), by);
    }
  },
  /** Air of the day, the loop starting as far above it. */
  DAY("air of the day", Dimension.TEMPERATURE, 5) {
    @Override
    Setting moved(double by) {
      return Setting.warmer(label(), by).and(Setting.warmerStart("", -by));
    }
  },
  /** Boost, as a share of what it is. */
  BOOST("boost", Dimension.FRACTION, 0.05) {
    @Override
    Setting moved(double by) {
      return Setting.boost(label(), 1 + by);
    }
  },
  /** Length of the waits, as a share of what it is. */
  WAITS("length of the waits", Dimension.FRACTION, 0.1) {
    @Override
    Setting moved(double by) {
      return Setting.waits(label(), 1 + by);
    }
  };

  private final String label;
  private final Dimension dimension;
  private final double step;

  ConditionKind(String label, Dimension dimension, double step) {
    this.label = label;
    this.dimension = dimension;
    this.step = step;
  }

  /** Returns what it is, in words. */
  public String label() {
    return label;
  }

  /** Returns what it measures; a share is of the first's value. */
  public Dimension dimension() {
    return dimension;
  }

  /** Returns by how much it is moved to see what it is worth. */
  double step() {
    return step;
  }

  /** Furthest that two tests may be thought to be apart, K, and as a share. */
  private static final double FURTHEST = 60;

  private static final double FURTHEST_SHARE = 1;

  /**
   * Returns how far apart two tests may be thought to be at the most.
   *
   * @param value of the first, SI
   */
  double furthest(double value) {
    return dimension == Dimension.FRACTION ? FURTHEST_SHARE * Math.abs(value) : FURTHEST;
  }

  /** Returns the conditions with it moved. */
  abstract Setting moved(double by);
}
