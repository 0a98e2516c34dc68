package soakloop.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soakloop.quantity.Curve;
import soakloop.quantity.Dimension;
import soakloop.quantity.Estimate;

/** Reads a curve: one value, or points {@code [[place, value], ...]} with rising places. */
final class CurveReader {
  private static final int MAX_POINTS = 2000;

  private final Context context;
  private final String path;
  private final KeySpec spec;
  private final Dimension of;
  private final QuantityReader quantities;

  private record Point(double place, double value) {}

  CurveReader(Context context, String path, KeySpec spec) {
    this.context = context;
    this.path = path;
    this.spec = spec;
    this.of = spec.dimension().orElseThrow();
    this.quantities = new QuantityReader(context, path, spec);
  }

  Curve read(Node node) {
    if (node instanceof Node.Scalar scalar && !scalar.text().isBlank()) {
      Optional<Estimate> value = quantities.value(scalar);
      value.ifPresent(v -> context.value(path, of, v, false));
      return Curve.constant(value.map(Estimate::value).orElse(0.0));
    }
    if (!(node instanceof Node.Items items) || items.items().isEmpty()) {
      problem(node.mark(), "is " + node.kind() + "; it takes " + Wanted.by(spec));
      return Curve.constant(0);
    }
    if (items.items().size() > MAX_POINTS) {
      problem(node.mark(), "has more than " + MAX_POINTS + " points");
      return Curve.constant(0);
    }
    return points(items.items());
  }

  private Curve points(List<Node> items) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < items.size(); i++) {
      add(points, items.get(i), i + 1);
    }
    if (points.isEmpty()) {
      return Curve.constant(0);
    }
    return Curve.of(
        points.stream().mapToDouble(Point::place).toArray(),
        points.stream().mapToDouble(Point::value).toArray());
  }

  private void add(List<Point> points, Node item, int number) {
    if (!(item instanceof Node.Items pair
        && pair.items().size() == 2
        && pair.items().get(0) instanceof Node.Scalar place
        && pair.items().get(1) instanceof Node.Scalar value)) {
      problem(item.mark(), "takes points of two values each, like " + Wanted.pointsExample(spec));
      return;
    }
    Optional<Estimate> x = quantities.place(place);
    Optional<Estimate> y = quantities.value(value);
    y.ifPresent(e -> context.value(path + "." + number + ".2", of, e, false));
    if (x.isEmpty() || y.isEmpty()) {
      return;
    }
    if (!points.isEmpty() && !(x.get().value() > points.get(points.size() - 1).place())) {
      problem(
          place.mark(),
          "found `"
              + place.shown()
              + "`, which is not above the point before it; points must rise");
      return;
    }
    points.add(new Point(x.get().value(), y.get().value()));
  }

  private void problem(Mark mark, String message) {
    context.problem(mark, path, message);
  }
}
