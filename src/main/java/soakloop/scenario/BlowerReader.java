package soakloop.scenario;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import soakloop.charge.EfficiencyTable;
import soakloop.quantity.Curve;
import soakloop.rig.AdiabaticEfficiency;
import soakloop.rig.AirDelivery;
import soakloop.rig.Blower;
import soakloop.rig.DuctMetal;
import soakloop.rig.Materials;

/** Reads the blower. */
final class BlowerReader {
  private final In in;

  BlowerReader(In in) {
    this.in = in;
  }

  Blower read() {
    Blower blower =
        new Blower(
            delivery(),
            efficiency(),
            in.number("mechanical-efficiency"),
            in.number("inlet-pick-up"),
            in.number("inlet-loss"),
            casing());
    in.done();
    return blower;
  }

  private AdiabaticEfficiency efficiency() {
    List<In> rows = in.sections("efficiency-table");
    if (!in.has("efficiency-table")) {
      return new AdiabaticEfficiency.Constant(in.number("adiabatic-efficiency"));
    }
    in.refuse("adiabatic-efficiency", "has no use beside efficiency-table; give one or the other");
    List<Double> ratios = new ArrayList<>();
    List<Curve> lines = new ArrayList<>();
    for (In row : rows) {
      ratios.add(row.number("pressure-ratio"));
      lines.add(row.curve("efficiency").orElse(Curve.constant(0.6)));
      row.done();
    }
    AdiabaticEfficiency standIn = new AdiabaticEfficiency.Constant(0.6);
    return in.context().hasProblems(in.path("efficiency-table"))
        ? standIn
        : table(rows, ratios, lines)
            .<AdiabaticEfficiency>map(AdiabaticEfficiency.Mapped::new)
            .orElse(standIn);
  }

  private Optional<EfficiencyTable> table(List<In> rows, List<Double> ratios, List<Curve> lines) {
    if (rows.size() < 2) {
      in.problem("efficiency-table", "needs two pressure ratios or more");
      return Optional.empty();
    }
    double[] speeds = places(lines.get(0));
    if (speeds.length < 2) {
      rows.get(0).problem("efficiency", "needs two speeds or more");
      return Optional.empty();
    }
    for (int i = 1; i < rows.size(); i++) {
      if (!(ratios.get(i) > ratios.get(i - 1))) {
        rows.get(i).problem("pressure-ratio", "must be above that of the item before it");
        return Optional.empty();
      }
      if (!same(places(lines.get(i)), speeds)) {
        rows.get(i).problem("efficiency", "must have the same speeds as the first item");
        return Optional.empty();
      }
    }
    try {
      return Optional.of(
          EfficiencyTable.of(
              ratios.stream().mapToDouble(r -> r).toArray(),
              speeds,
              lines.stream().map(BlowerReader::values).toArray(double[][]::new)));
    } catch (IllegalArgumentException e) {
      in.problem("efficiency-table", "cannot be: " + e.getMessage());
      return Optional.empty();
    }
  }

  /** Returns whether speeds are the same but for how units round. */
  private static boolean same(double[] a, double[] b) {
    return a.length == b.length
        && IntStream.range(0, a.length).allMatch(i -> Math.abs(a[i] - b[i]) <= 1e-9 * a[i]);
  }

  private static double[] places(Curve curve) {
    double[] places = new double[curve.size()];
    Arrays.setAll(places, curve::place);
    return places;
  }

  private static double[] values(Curve curve) {
    double[] values = new double[curve.size()];
    Arrays.setAll(values, curve::value);
    return values;
  }

  private AirDelivery delivery() {
    if (in.has("air-flow")) {
      for (String other :
          new String[] {
            "displacement", "drive-ratio", "pulleys", "volumetric-efficiency", "leakage"
          }) {
        in.refuse(other, "has no use beside air-flow; give one or the other");
      }
      return new AirDelivery.Stated(in.curve("air-flow").orElse(Curve.constant(0)));
    }
    boolean ratioOnce = in.has("drive-ratio") != in.has("pulleys");
    if (in.present() && (!in.has("displacement") || !ratioOnce)) {
      in.problem(
          "", "needs displacement with drive-ratio or pulleys (one of the two), or else air-flow");
    }
    double displacement = in.optional("displacement").orElse(1e-3);
    double ratio = in.optional("drive-ratio").orElse(2);
    In pulleys = in.section("pulleys");
    if (pulleys.present()) {
      ratio = pulleys.number("crank") / pulleys.number("blower") * pulleys.number("step-up");
      pulleys.done();
    }
    return AirDelivery.PositiveDisplacement.of(
        displacement, ratio, in.number("volumetric-efficiency"), in.number("leakage"));
  }

  private DuctMetal casing() {
    In casing = in.section("case");
    DuctMetal metal =
        new DuctMetal(
            casing.number("mass") * Materials.ALUMINIUM_HEAT_CAPACITY,
            casing.number("conductance"),
            casing.number("air-flow"),
            casing.number("surroundings-conductance"));
    casing.done();
    return metal;
  }
}
