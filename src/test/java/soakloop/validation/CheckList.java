package soakloop.validation;

import java.util.ArrayList;
import java.util.List;

/** Collects checks of one group; kind and source stay in force until changed. */
final class CheckList {
  private final String group;
  private final List<Check> checks = new ArrayList<>();
  private Kind kind = Kind.ANALYTIC;
  private String source = "";

  CheckList(String group) {
    this.group = group;
  }

  CheckList from(Kind kind, String source) {
    this.kind = kind;
    this.source = source;
    return this;
  }

  CheckList add(String what, double expected, double computed, Tolerance tolerance, String unit) {
    checks.add(new Check(group, what, kind, source, expected, computed, tolerance, unit));
    return this;
  }

  /** A number without an expectation. */
  CheckList report(String what, double computed, String unit) {
    return add(what, Double.NaN, computed, Tolerance.reported(), unit);
  }

  List<Check> checks() {
    return List.copyOf(checks);
  }
}
