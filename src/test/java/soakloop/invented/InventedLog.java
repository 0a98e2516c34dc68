package soakloop.invented;

import java.util.Random;
import soakloop.invented.Garage.Core;
import soakloop.invented.TruthCar.Mesh;
import soakloop.invented.TruthLoop.Start;

/** The invented logs that ship with the program. */
enum InventedLog {
  /** Five pulls on a cool morning. */
  COOL_MORNING("cool-morning.csv", LogStyle.SHOP, 3101, 392, 151) {
    @Override
    TruthCar car() {
      return Garage.dynoCar(Core.STANDARD, deviations());
    }

    @Override
    Duty duty() {
      return dyno(deviations());
    }

    @Override
    Start start() {
      return new Start(24, 29, 72, 40);
    }
  },

  /** The same car and plan with a denser core, started a little warmer. */
  DENSER_CORE("denser-core.csv", LogStyle.SHOP, 3102, 392, 513) {
    @Override
    TruthCar car() {
      return Garage.dynoCar(Core.DENSER, deviations());
    }

    @Override
    Duty duty() {
      return dyno(deviations());
    }

    @Override
    Start start() {
      return new Start(27, 33, 74, 44);
    }
  },

  /** A street car leaving a traffic jam on a hot afternoon. */
  TRAFFIC_RECOVERY("traffic-recovery.csv", LogStyle.ROAD, 3103, 78, 504) {
    @Override
    TruthCar car() {
      return Garage.streetCar(deviations());
    }

    @Override
    Duty duty() {
      return new RoadHome(
          new Day(34, 99.8e3, 0.40), 9 * 6894.757, 1.9 * deviations().fanVelocity(), 0.14);
    }

    @Override
    Start start() {
      return new Start(58, 71, 90, 82);
    }
  };

  private final String fileName;
  private final LogStyle style;
  private final long noiseSeed;
  private final long carSeed;
  private final long coreSeed;

  InventedLog(String fileName, LogStyle style, long noiseSeed, long carSeed, long coreSeed) {
    this.fileName = fileName;
    this.style = style;
    this.noiseSeed = noiseSeed;
    this.carSeed = carSeed;
    this.coreSeed = coreSeed;
  }

  abstract TruthCar car();

  abstract Duty duty();

  abstract Start start();

  private static Duty dyno(Deviations off) {
    return new DynoDay(new Day(17, 100.4e3, 0.60), 5, 13 * 6894.757, 1.5 * off.fanVelocity());
  }

  /** Name of the shipped file. */
  String fileName() {
    return fileName;
  }

  /** How far the true car is from the stated one. */
  Deviations deviations() {
    return Deviations.draw(carSeed, coreSeed);
  }

  /** Runs the whole session on the shipped mesh. */
  TruthRun run() {
    Duty duty = duty();
    return TruthLoop.run(
        car(), duty, start(), Mesh.SHIPPED.step(), duty.duration(), style.interval());
  }

  /** Writes a run down as the logger would. */
  String text(TruthRun run) {
    Random noise = new Random(noiseSeed);
    StringBuilder text = new StringBuilder();
    text.append("# Invented log, made by a generator for demonstration; ")
        .append("no real car, place or person\n")
        .append("# Seed ")
        .append(noiseSeed)
        .append('\n')
        .append(style.header())
        .append('\n');
    for (TruthLoop.Truth truth : run.truths()) {
      text.append(style.row(truth, noise)).append('\n');
    }
    return text.toString();
  }
}
