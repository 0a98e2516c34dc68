package soakloop.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import soakloop.log.Signal;
import soakloop.quantity.Estimate;

/**
 * The loop's flow from a heat balance of the core, as a log shows it: what the charge air leaves is
 * what the coolant takes.
 *
 * <p>Equation: flow = (Q - C dT) / (rho c S) with the air's heat Q, the core's own heat capacity C
 * and warming dT, and the coolant's rise S summed over the pull and the seconds after it. Where the
 * car idles before the pull, both sides count from what they are there, so that two sensors that
 * differ by a constant do not matter.
 *
 * <p>Its interval adds, each nine times in ten and independent: air flow and air sensors, lag and
 * disagreement of the coolant's sensors, coolant and core capacity, and noise. Only noise averages
 * out over pulls. Heat that the core's outside takes from the engine bay is left out.
 *
 * @param pulls one for each pull that allows it
 * @param mean over them, m3/s; empty if none allows it
 * @param missing channels that it would take
 * @param why why there is none, one sentence; empty if there is one
 */
public record CoolantFlow(
    List<OfPull> pulls, Optional<Estimate> mean, List<Signal> missing, String why) {
  /** Volumetric heat capacity from half glycol to plain water, J/(m3 K) at 20 to 60 degC. */
  private static final Estimate ANY_COOLANT = new Estimate(3.86e6, 0.3e6);

  /** Metal and coolant of a core of 2 to 6 kg, J/K (common practice, no source). */
  private static final Estimate ANY_CORE = new Estimate(6e3, 3.5e3);

  /** Wider than this share of its value a flow is not told. */
  private static final double WIDEST = 0.5;

  /** Steps of its sensors that the coolant must rise by, on average over the pull. */
  private static final double STEPS = 3;

  /** How long after the lift the engine runs down, s. */
  private static final double RUN_DOWN = 1;

  /** How long after a pull the core is busy, s. */
  private static final double BUSY = 20;

  /** How long before a pull the engine is brought up, s. */
  private static final double BROUGHT_UP = 4;

  /** Keeps the lists as they are. */
  public CoolantFlow {
    pulls = List.copyOf(pulls);
    missing = List.copyOf(missing);
  }

  /**
   * The flow in one pull.
   *
   * @param pull its number
   * @param flow m3/s
   * @param steady half width of what is alike in all pulls, m3/s
   * @param noise half width of the rest, m3/s
   * @param airHeat what the air leaves, J
   * @param rise mean rise of the coolant over the pull, K
   */
  public record OfPull(
      int pull, Estimate flow, double steady, double noise, double airHeat, double rise) {}

  /**
   * What is known of the core's coolant side.
   *
   * @param perVolume volumetric heat capacity of the coolant, J/(m3 K)
   * @param core heat capacity of core metal and the coolant in it, J/K
   */
  public record Loop(Estimate perVolume, Estimate core) {
    /** Any coolant, any core. */
    public static final Loop ANY = new Loop(ANY_COOLANT, ANY_CORE);
  }

  /** What a log alone tells. */
  static CoolantFlow of(Channels channels, List<Pull> pulls, LogOptions options) {
    List<Signal> missing =
        Stream.of(
                Signal.CORE_COOLANT_IN,
                Signal.CORE_COOLANT_OUT,
                Signal.AIR_MASS_FLOW,
                Signal.CORE_AIR_IN,
                Signal.CHARGE_TEMPERATURE)
            .filter(s -> channels.updates(s).isEmpty())
            .toList();
    return AirSide.of(channels, options)
        .filter(air -> missing.isEmpty())
        .map(air -> of(channels.all(), pulls, air, Loop.ANY, options))
        .orElseGet(
            () ->
                none(
                    missing,
                    "The log lacks "
                        + String.join(", ", missing.stream().map(Signal::label).toList())
                        + "."));
  }

  /**
   * Reads it from a log's coolant and what is known of the air.
   *
   * @param channels of the log
   * @param pulls of the log, in order of time
   * @param air heat that the air leaves
   * @param loop what is known of coolant and core
   * @param options what is known of the sensors
   */
  public static CoolantFlow of(
      Map<Signal, Channel> channels, List<Pull> pulls, AirHeat air, Loop loop, LogOptions options) {
    Optional<Channel> in = Optional.ofNullable(channels.get(Signal.CORE_COOLANT_IN));
    Optional<Channel> out = Optional.ofNullable(channels.get(Signal.CORE_COOLANT_OUT));
    if (in.isEmpty() || out.isEmpty()) {
      Signal lacking = in.isEmpty() ? Signal.CORE_COOLANT_IN : Signal.CORE_COOLANT_OUT;
      return none(List.of(lacking), "The log lacks " + lacking.label() + ".");
    }
    List<OfPull> found = new ArrayList<>();
    double free = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < pulls.size(); i++) {
      Pull pull = pulls.get(i);
      double next = i + 1 < pulls.size() ? pulls.get(i + 1).start() - BROUGHT_UP : Double.MAX_VALUE;
      double end = Math.min(next, lastOf(in.get(), out.get()));
      CoreRise.of(
              in.get(), out.get(), pull, Math.max(free, firstOf(in.get(), out.get())), end, options)
          .flatMap(rise -> ofPull(pull, rise, air, loop, steps(in.get(), out.get())))
          .ifPresent(found::add);
      free = pull.end() + BUSY;
    }
    return found.isEmpty()
        ? none(
            List.of(),
            "In no pull does the coolant's rise through the core stand clear of what its sensors"
                + " may be off.")
        : new CoolantFlow(found, Optional.of(mean(found)), List.of(), "");
  }

  private static CoolantFlow none(List<Signal> missing, String why) {
    return new CoolantFlow(List.of(), Optional.empty(), missing, why);
  }

  private static double steps(Channel in, Channel out) {
    return STEPS * Math.max(in.quantum(), out.quantum());
  }

  private static double firstOf(Channel in, Channel out) {
    return Math.max(in.updates().time(0), out.updates().time(0));
  }

  private static double lastOf(Channel in, Channel out) {
    return Math.min(
        in.updates().time(in.updates().size() - 1), out.updates().time(out.updates().size() - 1));
  }

  private static Optional<OfPull> ofPull(
      Pull pull, CoreRise rise, AirHeat air, Loop loop, double least) {
    double lift = Math.min(rise.to(), pull.end() + RUN_DOWN);
    Estimate hot = air.over(rise.from(), lift);
    double after = rise.to() > lift ? air.over(lift, rise.to()).value() : 0;
    double heat = hot.value() + 0.5 * after;
    double heatSpread = Math.hypot(hot.spread(), 0.5 * after);
    double warming = rise.warming();
    CoreRise.Idle idle = rise.idle();
    if (idle.exists()) {
      double longer = (rise.to() - rise.from()) / (idle.to() - idle.from());
      double quiet = air.over(idle.from(), idle.to()).value() * longer;
      heat -= 0.5 * quiet;
      heatSpread = Math.hypot(heatSpread, 0.5 * quiet);
      warming -= idle.warming() * longer;
    }
    double meanRise = rise.rise() / (pull.end() - pull.start());
    double taken = heat - loop.core().value() * warming;
    if (!(meanRise > least) || !(taken > 0)) {
      return Optional.empty();
    }
    double flow = taken / (loop.perVolume().value() * rise.rise());
    double steady =
        flow
            * Math.sqrt(
                square(heatSpread / taken)
                    + square(loop.core().spread() * warming / taken)
                    + square(loop.perVolume().spread() / loop.perVolume().value())
                    + square(rise.steady() / rise.rise()));
    double noise = flow * rise.noise() / rise.rise();
    double spread = Math.hypot(steady, noise);
    return spread > WIDEST * flow
        ? Optional.empty()
        : Optional.of(
            new OfPull(
                pull.number(), new Estimate(flow, spread), steady, noise, hot.value(), meanRise));
  }

  private static double square(double x) {
    return x * x;
  }

  private static Estimate mean(List<OfPull> pulls) {
    int n = pulls.size();
    double flow = pulls.stream().mapToDouble(p -> p.flow().value()).sum() / n;
    double steady = pulls.stream().mapToDouble(OfPull::steady).sum() / n;
    double noise = Math.sqrt(pulls.stream().mapToDouble(p -> square(p.noise())).sum()) / n;
    return new Estimate(flow, Math.hypot(steady, noise));
  }
}
