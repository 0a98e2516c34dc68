package soakloop.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soakloop.log.Signal;

/**
 * Finds the pulls of a log: steady climbs of engine speed under full load.
 *
 * <p>Throttle, boost, air flow and power tell the load. A log without any of them shows climbs
 * only: then those count that reach near the highest speed of all, and shorter ones that repeat
 * their rate from their starting speed, since a drive through traffic does neither. Without engine
 * speed a road speed in one gear stands for it; without both the spans under full load are taken.
 */
final class PullFinder {
  private static final double RPM = 1.0 / 60;

  /** The least climb that is a pull; gear changes and blips aside nothing shorter is of use. */
  private static final double LEAST_RISE = 500 * RPM;

  private static final double LEAST_DURATION = 1.2;

  /** Slowest and quickest sweep, rev/s per s: a minute for 3,000 rpm, and first gear. */
  private static final double SLOWEST = 50 * RPM;

  private static final double QUICKEST = 3_000 * RPM;

  /** How far speed must fall for a climb to be over: more than a slipping tyre, under a shift. */
  private static final double TURN = 150 * RPM;

  /** More than any logger's noise: what sparse updates show beyond it is driving. */
  private static final double MOST_NOISE = 30 * RPM;

  /** What a road speed's highest value stands for where there is no engine speed. */
  private static final double STAND_IN_TOP = 6_000 * RPM;

  /** Spans under full load that are a pull where there is no speed at all, s. */
  private static final double LEAST_LOADED = 2;

  /** Time between updates of a throttle that places ends better than engine speed does, s. */
  private static final double QUICK_THROTTLE = 0.3;

  /** How far apart throttle and engine speed tell of one and the same event, s. */
  private static final double SAME_EVENT = 0.6;

  private final Channels channels;
  private final Updates speed;
  private final boolean standIn;
  private final double spacing;
  private final double noise;
  private final Load load;
  private final List<Load.Loaded> spans;
  private final SweepEdges edges;

  private PullFinder(Channels channels) {
    this.channels = channels;
    Updates engine = channels.updates(Signal.ENGINE_SPEED);
    Updates road = channels.updates(Signal.ROAD_SPEED);
    standIn = engine.size() < 3;
    speed = standIn ? road.scaled(STAND_IN_TOP / Math.max(1, road.highest()), 0) : engine;
    spacing = speed.size() < 2 ? 0 : speed.spacing();
    double quantum = Channels.quantum(speed);
    double seen = Math.min(MOST_NOISE, Numbers.noise(speed.values()));
    noise = Math.max(seen, quantum / Math.sqrt(12));
    load = Load.of(channels, speed);
    spans = load.spans();
    edges = new SweepEdges(speed, noise, quantum);
  }

  /** Finds the pulls in order of time. */
  static List<Pull> find(Channels channels) {
    PullFinder finder = new PullFinder(channels);
    if (finder.speed.size() < 3) {
      return finder.spansOnly();
    }
    List<SweepEdges.Edges> sweeps = new ArrayList<>();
    for (Leg leg : Leg.of(finder.speed, Math.max(TURN, 6 * finder.noise), finder.gap())) {
      finder.sweep(leg).ifPresent(sweeps::add);
    }
    List<SweepEdges.Edges> kept =
        finder.load.known() ? sweeps : new Repeats(finder.speed).kept(sweeps);
    return new PullMaker(channels, finder.speed, finder.standIn, finder.load).pulls(kept);
  }

  /** Time without updates after which nothing can be said of what lies between, s. */
  private double gap() {
    return Math.max(2, 5 * spacing);
  }

  private List<Pull> spansOnly() {
    List<SweepEdges.Edges> pulls =
        spans.stream()
            .filter(s -> s.to() - s.from() >= LEAST_LOADED)
            .map(s -> new SweepEdges.Edges(s.from(), s.to(), 0, 0, 0))
            .toList();
    return new PullMaker(channels, speed, true, load).pulls(pulls);
  }

  private Optional<SweepEdges.Edges> sweep(Leg leg) {
    double foot = speed.time(leg.low());
    double top = speed.time(leg.high());
    double rise = speed.value(leg.high()) - speed.value(leg.low());
    if (rise < LEAST_RISE) {
      return Optional.empty();
    }
    double notAfter = top + 2 * spacing;
    Optional<SweepEdges.Edges> found;
    Optional<Load.Loaded> span = span(foot, top);
    if (!load.known()) {
      found = around(leg, speed.value(leg.low()), 0.75, 0.95, foot, notAfter);
    } else if (span.isEmpty()) {
      return Optional.empty();
    } else {
      double on = Math.max(foot, span.get().from());
      double slack = Math.max(0.3, load.promptSpacing().orElse(0));
      boolean prompt = load.promptSpacing().isPresent();
      double notBefore = prompt ? Math.max(foot, span.get().from() - slack) : foot;
      double last = prompt ? Math.min(notAfter, span.get().to() + slack) : notAfter;
      found = around(leg, speed.near(on, spacing), 0.45, 0.75, notBefore, last);
      found = found.map(e -> byThrottle(e, span.get()));
    }
    return found.filter(this::isPull);
  }

  /** The longest span under load that overlaps a climb. */
  private Optional<Load.Loaded> span(double foot, double top) {
    Load.Loaded best = new Load.Loaded(0, 0);
    double longest = 0;
    for (Load.Loaded span : spans) {
      double common = Math.min(span.to(), top) - Math.max(span.from(), foot);
      if (common > longest) {
        longest = common;
        best = span;
      }
    }
    return longest > 0 ? Optional.of(best) : Optional.empty();
  }

  private Optional<SweepEdges.Edges> around(
      Leg leg, double from, double low, double high, double notBefore, double notAfter) {
    double top = speed.value(leg.high());
    double seedFrom = reaches(leg, from + low * (top - from));
    double seedTo = reaches(leg, from + high * (top - from));
    return edges.around(
        Math.max(notBefore, seedFrom), Math.min(notAfter, seedTo), notBefore, notAfter);
  }

  /** When a climb is above a speed for good, s: a blip before it does not count. */
  private double reaches(Leg leg, double level) {
    int i = leg.high();
    while (i > leg.low() && speed.value(i - 1) >= level) {
      i--;
    }
    return speed.time(i);
  }

  /**
   * Where the throttle is logged quickly and opens or shuts near an end, it is the sharper clock of
   * the same event. Where a dyno holds the speed at first, the climb begins later.
   */
  private SweepEdges.Edges byThrottle(SweepEdges.Edges found, Load.Loaded span) {
    double prompt = load.promptSpacing().orElse(Double.POSITIVE_INFINITY);
    if (prompt > Math.max(QUICK_THROTTLE, spacing / 2)) {
      return found;
    }
    double same = Math.max(SAME_EVENT, 1.5 * spacing);
    double start = Math.abs(span.from() - found.start()) <= same ? span.from() : found.start();
    double end = Math.abs(span.to() - found.end()) <= same ? span.to() : found.end();
    return new SweepEdges.Edges(start, end, found.from(), found.to(), found.rate());
  }

  private boolean isPull(SweepEdges.Edges edges) {
    double settled = edges.start() + Math.min(0.5, 0.2 * edges.duration());
    return edges.duration() >= LEAST_DURATION
        && edges.to() - edges.from() >= LEAST_RISE
        && edges.rate() >= SLOWEST
        && edges.rate() <= QUICKEST
        && (!load.known() || load.full(settled, edges.end()));
  }
}
