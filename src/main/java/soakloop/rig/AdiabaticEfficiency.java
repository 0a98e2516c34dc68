package soakloop.rig;

import soakloop.charge.EfficiencyTable;
import soakloop.quantity.Require;

/** Ideal over real temperature rise of a compressor. */
public sealed interface AdiabaticEfficiency {
  /**
   * Returns the efficiency.
   *
   * @param pressureRatio outlet over inlet, 1 or more
   * @param speed of the compressor, rev/s; of the engine where its own is not known
   * @return above 0 to 1
   */
  double at(double pressureRatio, double speed);

  /**
   * One value for all conditions.
   *
   * @param value 0.2 to 1
   */
  record Constant(double value) implements AdiabaticEfficiency {
    /** Checks the value. */
    public Constant {
      Require.within("adiabatic efficiency", value, 0.2, 1);
    }

    @Override
    public double at(double pressureRatio, double speed) {
      return value;
    }
  }

  /**
   * A table; outside it the nearest edge counts.
   *
   * @param table over pressure ratio and speed
   */
  record Mapped(EfficiencyTable table) implements AdiabaticEfficiency {
    @Override
    public double at(double pressureRatio, double speed) {
      return table.value(pressureRatio, speed);
    }
  }
}
