package soakloop.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soakloop.quantity.Curve;
import soakloop.quantity.Dimension;
import soakloop.quantity.Estimate;
import soakloop.quantity.QuantityException;

/** Reads a curve: one value, or points {@code [[place, value], ...]} with rising places. */
final class CurveReader {
  private static final int MAX_POINTS = 2000;

  private final Context context;
  private final String path;
  private final KeySpec spec;

  CurveReader(Context context, String path, KeySpec spec) {
    this.context = context;
    this.path = path;
    this.spec = spec;
  }

  Curve read(Node node) {
    Dimension of = spec.dimension().orElseThrow();
    if (node instanceof Node.Scalar scalar) {
      Optional<Estimate> value = quantity(scalar, of);
      value.ifPresent(v -> context.value(path, of, v, false));
      return Curve.constant(value.map(Estimate::value).orElse(0.0));
    }
    if (!(node instanceof Node.Items items) || items.items().isEmpty()) {
      problem(
          node.mark(), "is " + node.kind() + "; it takes one value, or points like " + example());
      return Curve.constant(0);
    }
    if (items.items().size() > MAX_POINTS) {
      problem(node.mark(), "has more than " + MAX_POINTS + " points");
      return Curve.constant(0);
    }
    return points(items.items(), of);
  }

  private Curve points(List<Node> items, Dimension of) {
    List<double[]> points = new ArrayList<>();
    for (Node item : items) {
      if (item instanceof Node.Items pair
          && pair.items().size() == 2
          && pair.items().get(0) instanceof Node.Scalar place
          && pair.items().get(1) instanceof Node.Scalar value) {
        Optional<Estimate> x = quantity(place, spec.over().orElseThrow());
        Optional<Estimate> y = quantity(value, of);
        if (x.isPresent() && y.isPresent()) {
          add(points, x.get().value(), y.get().value(), item.mark());
        }
      } else {
        problem(item.mark(), "has " + item.kind() + " for a point; write points like " + example());
      }
    }
    if (points.isEmpty()) {
      return Curve.constant(0);
    }
    return Curve.of(
        points.stream().mapToDouble(p -> p[0]).toArray(),
        points.stream().mapToDouble(p -> p[1]).toArray());
  }

  private void add(List<double[]> points, double x, double y, Mark mark) {
    if (!points.isEmpty() && !(x > points.get(points.size() - 1)[0])) {
      problem(mark, "has points whose first numbers do not rise");
      return;
    }
    points.add(new double[] {x, y});
  }

  private Optional<Estimate> quantity(Node.Scalar scalar, Dimension dimension) {
    try {
      Estimate estimate = context.quantity(scalar.text(), dimension);
      if (dimension.equals(spec.dimension().orElseThrow())
          && Ranges.outside(estimate.value(), spec)) {
        problem(scalar.mark(), "found `" + scalar.text() + "`; allowed: " + Ranges.of(spec));
        return Optional.empty();
      }
      return Optional.of(estimate);
    } catch (QuantityException e) {
      problem(scalar.mark(), "found `" + scalar.text() + "`, which " + e.getMessage());
      return Optional.empty();
    }
  }

  private String example() {
    return "[[0 "
        + symbol(spec.over().orElseThrow())
        + ", 10 "
        + symbol(spec.dimension().orElseThrow())
        + "], ...]";
  }

  private static String symbol(Dimension dimension) {
    return dimension.units().get(Math.min(1, dimension.units().size() - 1)).symbol();
  }

  private void problem(Mark mark, String message) {
    context.problem(mark, path, message);
  }
}
