package soakloop.scenario;

import java.util.Optional;
import soakloop.quantity.Dimension;
import soakloop.quantity.Estimate;
import soakloop.quantity.QuantityException;

/** Reads single quantities against what their key allows; what is wrong is noted. */
final class QuantityReader {
  private final Context context;
  private final String path;
  private final KeySpec spec;

  QuantityReader(Context context, String path, KeySpec spec) {
    this.context = context;
    this.path = path;
    this.spec = spec;
  }

  /** Returns the key's value if it can be used. */
  Optional<Estimate> value(Node.Scalar scalar) {
    Optional<Estimate> read = parse(scalar, spec.dimension().orElseThrow());
    if (read.isPresent() && Ranges.outside(read.get().value(), spec)) {
      problem(scalar, "; allowed: " + Ranges.of(spec, scalar.text()));
      return Optional.empty();
    }
    return read;
  }

  /** Returns the place of a curve's point if it can be used. */
  Optional<Estimate> place(Node.Scalar scalar) {
    Optional<Estimate> read = parse(scalar, spec.over().orElseThrow());
    return exact(scalar, read, "the first number of a point");
  }

  /** Returns a whole number if it is one. */
  Optional<Estimate> count(Node.Scalar scalar) {
    Optional<Estimate> read = exact(scalar, value(scalar), "a count");
    if (read.isPresent() && read.get().value() != Math.rint(read.get().value())) {
      problem(scalar, ", which must be a whole number");
      return Optional.empty();
    }
    return read;
  }

  private Optional<Estimate> exact(Node.Scalar scalar, Optional<Estimate> read, String what) {
    if (read.isPresent() && read.get().spread() > 0) {
      problem(scalar, ", but " + what + " takes no +/-");
      return Optional.empty();
    }
    return read;
  }

  private Optional<Estimate> parse(Node.Scalar scalar, Dimension dimension) {
    try {
      return Optional.of(context.quantity(scalar.text(), dimension));
    } catch (QuantityException e) {
      String words = spec.choices().isEmpty() ? "" : "; or a word: " + Wanted.oneOf(spec.choices());
      problem(scalar, ", which " + e.getMessage() + words);
      return Optional.empty();
    }
  }

  private void problem(Node.Scalar scalar, String message) {
    context.problem(scalar.mark(), path, "found `" + scalar.shown() + "`" + message);
  }
}
