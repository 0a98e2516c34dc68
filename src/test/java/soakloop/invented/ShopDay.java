package soakloop.invented;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import soakloop.invented.Garage.Core;
import soakloop.invented.TruthCar.Mesh;
import soakloop.invented.TruthLoop.Truth;
import soakloop.log.Log;
import soakloop.log.Signal;

/**
 * An invented dyno day drawn from a seed: the car as it truly is, the scenario that a shop would
 * write of it with honest spreads, the log of its pulls, and what is true of the pull after them.
 *
 * <p>The truth is not drawn from what the shop believes. Most of it is drawn evenly from about two
 * thirds of the shop's 90 % interval, core conductance and loop flow go together (a clogged loop),
 * blower, plenum and hoses are of another structure altogether, and in one day of eight one thing
 * lies outside what the shop thinks possible nine times in ten.
 */
public final class ShopDay {
  private static final double PSI = 6894.757;
  private static final double LITRES_PER_MINUTE = 60000;

  /** Steps of twice the shipped length move the truth by less than 0.05 K and take half as long. */
  static final double STEP = 0.01;

  /**
   * A mesh a tenth as dear, for logs whose flow is asked for and not the last tenth of a kelvin.
   */
  private static final Mesh COARSE = new Mesh(12, 4, 8, 5, 0.01);

  private static final double SWEEP_FROM = 2600;
  private static final double SWEEP_TO = 6700;
  private static final double COUNTED_TO = 6500;

  private final long seed;
  private final LogStyle style;
  private final PlannedDay plan;
  private final TruthLoop.Start start;
  private final Hardware car;
  private final Sensors sensors;
  private Optional<TruthRun> run = Optional.empty();

  /** What is true of the hardware; factors on what the shop writes down, but for the flow. */
  private record Hardware(
      double core,
      double flow,
      double efficiency,
      double front,
      double mass,
      double metal,
      double lag) {}

  /** By how much the sensors read high, K. */
  private record Sensors(double charge, double in, double out) {}

  /**
   * What is true of the pull after those that were logged.
   *
   * @param duty heat the core takes at the counted end, W for each 100 K that the air enters it
   *     above the coolant
   * @param flow of the coolant there, m3/s
   * @param peak highest bead temperature with what the sensor reads high, K
   */
  public record Answers(double duty, double flow, double peak) {}

  private ShopDay(
      long seed,
      LogStyle style,
      PlannedDay plan,
      TruthLoop.Start start,
      Hardware car,
      Sensors sensors) {
    this.seed = seed;
    this.style = style;
    this.plan = plan;
    this.start = start;
    this.car = car;
    this.sensors = sensors;
  }

  private ShopDay(long seed) {
    this.seed = seed;
    Random random = new Random(seed * 0x9E3779B97F4A7C15L);
    style = seed % 2 == 0 ? LogStyle.SHOP : LogStyle.ROAD;
    int pulls = 3 + random.nextInt(3);
    Day day =
        new Day(
            Math.round(between(random, 5, 36)),
            100 * Math.round(between(random, 930, 1020)),
            between(random, 0.2, 0.8));
    double usual = between(random, 60, 200);
    List<Double> waits = new ArrayList<>();
    for (int i = 0; i < pulls; i++) {
      waits.add((double) Math.round(usual * between(random, 0.85, 1.15)));
    }
    waits.set(pulls - 1, waits.get(pulls - 2));
    Sweep sweep =
        new Sweep(
            SWEEP_FROM,
            SWEEP_TO,
            Math.round(between(random, 7, 12)),
            Math.round(between(random, 9, 15)) * PSI,
            between(random, 0, 5),
            between(random, 1.0, 2.0));
    plan = new PlannedDay(day, sweep, waits);
    double loop = day.temperature() + between(random, 3, 15);
    start =
        new TruthLoop.Start(
            loop,
            loop + between(random, 2, 8),
            between(random, 62, 78),
            loop + between(random, 8, 20));
    double clogged = between(random, -1, 1);
    int odd = random.nextInt(32);
    car =
        new Hardware(
            odd == 0 ? 0.66 : odd == 1 ? 1.34 : 1 + 0.13 * clogged + between(random, -0.07, 0.07),
            odd == 2 ? 13.5 : 22 + 3.5 * clogged + between(random, -3, 3),
            between(random, -0.02, 0.02),
            odd == 3 ? 0.65 : between(random, 0.8, 1.15),
            between(random, 0.96, 1.04),
            between(random, 0.75, 1.25),
            between(random, 1.0, 2.3));
    sensors =
        new Sensors(
            between(random, -1.2, 1.2), between(random, -0.8, 0.8), between(random, -0.8, 0.8));
  }

  /** Draws a day. */
  public static ShopDay draw(long seed) {
    return new ShopDay(seed);
  }

  /**
   * Draws another day of the same car, loop and sensors with another core: started up to 10 K
   * hotter or colder, with up to 1 psi more or less boost, on a day a few kelvins away.
   *
   * @param conductance of the core, as a share of this day's
   * @param mass of the core, likewise
   */
  public ShopDay swapped(double conductance, double mass) {
    Random random = new Random((seed + 7919) * 0x9E3779B97F4A7C15L);
    Day day = plan.day();
    Day other =
        new Day(
            Math.round(day.temperature() + between(random, -5, 5)), day.pressure(), day.humidity());
    Sweep sweep = plan.sweep();
    Sweep swept =
        new Sweep(
            sweep.from(),
            sweep.to(),
            sweep.lasts(),
            sweep.boost() + between(random, -1, 1) * PSI,
            sweep.warming(),
            sweep.fanVelocity());
    double loop = Math.max(other.temperature(), start.loop() + between(random, -10, 10));
    double moved = loop - start.loop();
    TruthLoop.Start begun =
        new TruthLoop.Start(
            loop, start.sensor() + moved, start.runner(), start.blowerCase() + moved);
    return new ShopDay(
        seed + 500_000,
        style,
        new PlannedDay(other, swept, plan.waits()),
        begun,
        new Hardware(
            car.core * conductance,
            car.flow,
            car.efficiency,
            car.front,
            car.mass * mass,
            car.metal,
            car.lag),
        sensors);
  }

  /** Returns whether this day's loop is started hotter than another's, as their sensors show. */
  public boolean startsHotter(ShopDay other) {
    return start.loop() > other.start.loop();
  }

  /**
   * Returns the true charge where the last logged pull is counted, degC, with this day's car under
   * another day's conditions: its air, start, boost and waits.
   *
   * @param conditions whose
   */
  public double chargeUnder(ShopDay conditions) {
    TruthRun of =
        TruthLoop.run(
            car().withMesh(Mesh.SHIPPED),
            conditions.plan,
            conditions.start,
            STEP,
            conditions.plan.pullStart(pulls()),
            style.interval());
    double share = (COUNTED_TO - SWEEP_FROM) / (SWEEP_TO - SWEEP_FROM);
    double from = conditions.plan.pullStart(pulls() - 1);
    return of.at(from + share * conditions.plan.sweep().lasts()).charge();
  }

  private static double between(Random random, double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  /** Returns the kind of logger. */
  public String style() {
    return style.name().toLowerCase(Locale.ROOT);
  }

  /** Returns how many pulls were logged. */
  public int pulls() {
    return plan.waits().size();
  }

  private TruthCar car() {
    TruthCar stated =
        Garage.dynoCar(
            Core.STANDARD, new Deviations(car.core, 1, car.efficiency, car.front, 1, car.mass));
    Plenum.Shape p = stated.plenum();
    return new TruthCar(
        stated.displacement(),
        stated.filling(),
        stated.blower(),
        stated.core(),
        stated.coreLoss(),
        stated.front(),
        stated.frontFace(),
        stated.supply(),
        stated.back(),
        stated.reservoirVolume(),
        TruePump.through(60, 30, 42, 55, car.flow, 1),
        stated.coolant(),
        stated.referenceTemperature(),
        new Plenum.Shape(
            p.lidCapacity() * car.metal,
            p.runnerCapacity() * car.metal,
            p.lidFilm() * car.metal,
            p.runnerFilm() * car.metal,
            p.lidToEngine(),
            p.lidToRunner(),
            p.lidToHood(),
            p.runnerToEngine()),
        new ChargeSensor.Shape(car.lag, 0.035));
  }

  private TruthRun run() {
    if (run.isEmpty()) {
      run = Optional.of(run(Mesh.SHIPPED, STEP));
    }
    return run.get();
  }

  /** Runs the day on a mesh. */
  TruthRun run(Mesh mesh, double step) {
    return TruthLoop.run(
        car().withMesh(mesh), plan, start, step, plan.duration(), style.interval());
  }

  private Truth read(Truth truth) {
    return truth.reading(sensors.charge, sensors.in, sensors.out);
  }

  /** Returns the log, up to where the car is brought up for the next pull. */
  public String log() {
    Random noise = new Random(seed);
    StringBuilder text =
        new StringBuilder("# Invented log, made by a generator for tests; no real car or place\n");
    text.append(style.header()).append('\n');
    double end = plan.pullStart(pulls()) - Sweep.RUN_UP;
    for (Truth truth : run().truths()) {
      if (truth.time() < end) {
        text.append(style.row(read(truth), noise)).append('\n');
      }
    }
    return text.toString();
  }

  /**
   * Returns a log of the same day by a logger that also has air mass flow and air before the core,
   * ten rows a second, and the true flow of the loop beside it. Sensors lag and read off as their
   * seed has it.
   */
  public FullyLogged fullyLogged() {
    TruthRun coarse =
        TruthLoop.run(
            car().withMesh(COARSE), plan, start, COARSE.step(), plan.duration() - 0.1, 0.1);
    Random random = new Random(seed * 0x5DEECE66DL + 11);
    double meter = 1 + between(random, -0.06, 0.06);
    double before = between(random, -2.2, 2.2);
    double beforeLag = between(random, 1, 5);
    double step = random.nextBoolean() ? 1 : 0.1;
    List<Truth> truths = coarse.truths();
    Map<Signal, double[]> values = new EnumMap<>(Signal.class);
    double shown = truths.get(0).core().airIn();
    double[] slower = {between(random, 0, 2.4), between(random, 0, 2.4), between(random, 0, 2.4)};
    Truth first = read(truths.get(0));
    double[] late = {first.sensor(), first.coreIn(), first.coreOut()};
    double flow = 0;
    for (int i = 0; i < truths.size(); i++) {
      Truth t = read(truths.get(i));
      shown += 0.1 * (t.core().airIn() - shown) / beforeLag;
      double[] now = {t.sensor(), t.coreIn(), t.coreOut()};
      for (int k = 0; k < now.length; k++) {
        late[k] += 0.1 * (now[k] - late[k]) / (0.1 + slower[k]);
      }
      flow += t.coolantFlow() / truths.size();
      put(values, Signal.ENGINE_SPEED, truths, i, t.moment().engineSpeed() / 60);
      put(values, Signal.BOOST, truths, i, t.boost() + 300 * random.nextGaussian());
      put(values, Signal.AIR_MASS_FLOW, truths, i, meter * t.airFlow());
      put(values, Signal.CORE_AIR_IN, truths, i, kelvin(shown + before, 1, random));
      put(values, Signal.CHARGE_TEMPERATURE, truths, i, kelvin(late[0], step, random));
      put(values, Signal.CORE_COOLANT_IN, truths, i, kelvin(late[1], step, random));
      put(values, Signal.CORE_COOLANT_OUT, truths, i, kelvin(late[2], step, random));
    }
    double[] time = truths.stream().mapToDouble(Truth::time).toArray();
    return new FullyLogged(
        new Log("invented.csv", time, values, List.of(), List.of("Invented log")), flow);
  }

  /**
   * A log and what is true of it.
   *
   * @param log which
   * @param flow mean flow of the loop, m3/s
   */
  public record FullyLogged(Log log, double flow) {}

  private static void put(
      Map<Signal, double[]> values, Signal signal, List<Truth> truths, int i, double value) {
    values.computeIfAbsent(signal, s -> new double[truths.size()])[i] = value;
  }

  private static double kelvin(double celsius, double step, Random random) {
    return Math.round((celsius + 0.12 * random.nextGaussian()) / step) * step + Day.ZERO_CELSIUS;
  }

  /** Returns the truth of the next pull. */
  public Answers answers() {
    return answers(run());
  }

  Answers answers(TruthRun of) {
    double from = plan.pullStart(pulls());
    double share = (COUNTED_TO - SWEEP_FROM) / (SWEEP_TO - SWEEP_FROM);
    Truth counted = of.at(from + share * plan.sweep().lasts());
    TruthLoop.InCore core = counted.core();
    return new Answers(
        100 * core.heat() / (core.airIn() - core.coolantIn()),
        counted.coolantFlow(),
        of.sensorPeak(from, plan.duration()) + sensors.charge + Day.ZERO_CELSIUS);
  }

  /**
   * Returns the scenario as the shop writes it.
   *
   * @param log name of the log's file
   */
  @SuppressWarnings("StringConcatToTextBlock") // lines with numbers stand beside lines without
  public String scenario(String log) {
    Truth first = read(run().truths().get(0));
    Day day = plan.day();
    StringBuilder steps = new StringBuilder("  - idle: {for: 20 s}\n");
    for (double wait : plan.waits()) {
      steps.append(
          line(
              "  - pull: {from: %.0f rpm, to: %.0f rpm, in: %.0f s, counted-to: %.0f rpm}\n"
                  + "  - wait: {for: %.0f s, engine: idle, pump: on}\n",
              SWEEP_FROM, SWEEP_TO, plan.sweep().lasts(), COUNTED_TO, wait));
    }
    double psi = plan.sweep().boost() / PSI;
    return line("title: Invented day %d\nunits: us\n", seed)
        + line(
            "day: {temperature: %.0f degC, pressure: %.1f kPa, humidity: 50 %% +/- 30 points,"
                + " warming: 2.5 K +/- 3 K}\n",
            day.temperature(), day.pressure() / 1000)
        + "engine: {displacement: 4.1 L, idle-speed: 850 rpm}\n"
        + "blower: {displacement: 1.7 L/rev, drive-ratio: 2.35, adiabatic-efficiency: 62 % +/- 4"
        + " points, inlet-pick-up: 6 K +/- 2 K}\n"
        + line(
            "boost: [[2600 rpm, %.1f psi], [3500 rpm, %.1f psi], [4500 rpm, %.1f psi], [6700 rpm,"
                + " %.1f psi]]\n",
            0.89 * psi, 0.933 * psi, 0.968 * psi, psi)
        + "core:\n"
        + "  size: {length: 360 mm, width: 170 mm, thickness: 55 mm}\n"
        + "  mass: 3.4 kg +/- 8 %\n"
        + "  coolant: 0.9 L\n"
        + "  conductance: {value: 0.70 kW/K +/- 30 %, air-flow: 0.5 kg/s, coolant-flow: 25 L/min,"
        + " air-side-share: 70 %}\n"
        + "  passes: {count: 2, arranged: depth}\n"
        + "plenum: {conductance: 30 W/K +/- 50 %}\n"
        + "sensor: {time-constant: 2 s +/- 50 %}\n"
        + "loop: [reservoir, pump, supply-hose, core, return-hose, heat-exchanger]\n"
        + "reservoir: {volume: 5 L +/- 10 %}\n"
        + "pump: {flow: 23 L/min +/- 40 %, power: 60 W +/- 50 %}\n"
        + "supply-hose: {length: 1.8 m, bore: 19 mm}\n"
        + "return-hose: {length: 1.5 m, bore: 19 mm}\n"
        + "heat-exchanger:\n"
        + "  face: {width: 660 mm, height: 300 mm}\n"
        + "  coolant: 1.5 L\n"
        + "  conductance: {value: 150 W/K +/- 30 %, air-speed: 2 m/s, coolant-flow: 20 L/min,"
        + " air-side-share: 78 %}\n"
        + "coolant: {glycol: ethylene, by-volume: 30 %}\n"
        + "airflow: {shop-fan: weak, inlet-rise: 0 K +/- 2 K}\n"
        + line(
            "start: {charge: %.1f degC +/- 1 K, loop-coolant: %.1f degC +/- 1 K, engine-coolant: 88"
                + " degC +/- 4 K}\n",
            first.sensor(), first.coreIn())
        + "session:\n"
        + steps
        + "log: {file: "
        + log
        + "}\n";
  }

  private static String line(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }

  /** Returns a line on what is true, for a person who looks into a case. */
  public String truth() {
    return line(
        "%s, %d pulls, core %.2f, pump %.1f L/min, flow %.1f L/min, front %.2f, metal %.2f, lag %.1f,"
            + " sensors %+.1f %+.1f %+.1f, warming %.1f",
        style(),
        pulls(),
        car.core,
        car.flow,
        answers().flow() * LITRES_PER_MINUTE,
        car.front,
        car.metal,
        car.lag,
        sensors.charge,
        sensors.in,
        sensors.out,
        plan.sweep().warming());
  }
}
