package soakloop.invented;

import java.util.Random;
import soakloop.invented.TruthLoop.Truth;

/** How a logger writes down what its sensors say: channels, units, steps of the display, noise. */
enum LogStyle {
  /** A shop's logger in US units, ten times a second. */
  SHOP(
      0.1,
      "Time [s],Engine speed [rpm],Boost [psi],Inlet air [degF],Charge temp [degF],"
          + "Coolant core in [degF],Coolant core out [degF],Engine coolant [degF]") {
    @Override
    String row(Truth t, Random noise) {
      return String.join(
          ",",
          tenths(t.time()),
          whole(t.moment().engineSpeed() + 4 * spread(noise)),
          tenths((t.boost() + 250 * spread(noise)) / PSI),
          fahrenheit(t.inlet() + 0.15 * spread(noise)),
          fahrenheit(t.sensor() + 0.15 * spread(noise)),
          fahrenheit(t.coreIn() + 0.12 * spread(noise)),
          fahrenheit(t.coreOut() + 0.12 * spread(noise)),
          fahrenheit(t.moment().engineCoolant() + 0.15 * spread(noise)));
    }
  },

  /** A road logger in metric units, five times a second. */
  ROAD(
      0.2,
      "Time [s],Engine speed [rpm],Road speed [km/h],Boost [kPa],Inlet air [degC],"
          + "Charge temp [degC],Coolant core in [degC],Engine coolant [degC]") {
    @Override
    String row(Truth t, Random noise) {
      return String.join(
          ",",
          tenths(t.time()),
          whole(t.moment().engineSpeed() + 6 * spread(noise)),
          whole(t.moment().roadSpeed() + 0.3 * spread(noise)),
          whole((t.boost() + 300 * spread(noise)) / 1000),
          whole(t.inlet() + 0.2 * spread(noise)),
          whole(t.sensor() + 0.15 * spread(noise)),
          whole(t.coreIn() + 0.12 * spread(noise)),
          whole(t.moment().engineCoolant() + 0.15 * spread(noise)));
    }
  };

  private static final double PSI = 6894.757;

  private final double interval;
  private final String header;

  LogStyle(double interval, String header) {
    this.interval = interval;
    this.header = header;
  }

  abstract String row(Truth truth, Random noise);

  /** Time between rows [s]. */
  double interval() {
    return interval;
  }

  /** The line of names and units. */
  String header() {
    return header;
  }

  /** Noise of unit standard deviation: twelve even numbers, the same on every Java. */
  private static double spread(Random noise) {
    double sum = -6;
    for (int i = 0; i < 12; i++) {
      sum += noise.nextDouble();
    }
    return sum;
  }

  private static String fahrenheit(double celsius) {
    return whole(celsius * 1.8 + 32);
  }

  private static String whole(double value) {
    return Long.toString(Math.round(value));
  }

  private static String tenths(double value) {
    long tenths = Math.round(value * 10);
    long size = Math.abs(tenths);
    return (tenths < 0 ? "-" : "") + size / 10 + "." + size % 10;
  }
}
