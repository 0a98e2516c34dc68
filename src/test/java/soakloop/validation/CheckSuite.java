package soakloop.validation;

import java.util.List;

/** A set of checks on one subject. Add new suites to {@link Suites}. */
interface CheckSuite {
  /** Computes the checks; called once. */
  List<Check> checks();
}
