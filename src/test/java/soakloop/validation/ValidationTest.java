package soakloop.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Runs every check of every suite, under the tag of its kind. */
class ValidationTest {
  @Tag("published")
  @TestFactory
  Stream<DynamicTest> published() {
    return tagged("published");
  }

  @Tag("library")
  @TestFactory
  Stream<DynamicTest> library() {
    return tagged("library");
  }

  @Tag("analytic")
  @TestFactory
  Stream<DynamicTest> analytic() {
    return tagged("analytic");
  }

  @Tag("trade")
  @TestFactory
  Stream<DynamicTest> trade() {
    return tagged("trade");
  }

  @Test
  void noCheckIsListedTwice() {
    long distinct =
        Suites.checks().stream().map(c -> c.group() + c.what() + c.source()).distinct().count();
    assertEquals(Suites.checks().size(), distinct);
  }

  private static Stream<DynamicTest> tagged(String tag) {
    return Suites.checks().stream()
        .filter(check -> check.kind().tag().equals(tag))
        .map(
            check ->
                DynamicTest.dynamicTest(
                    name(check), () -> assertTrue(check.passes(), () -> failure(check))));
  }

  private static String name(Check check) {
    return check.group() + ": " + check.what() + " (" + check.source() + ")";
  }

  private static String failure(Check check) {
    return "expected "
        + check.expected()
        + " "
        + check.unit()
        + ", computed "
        + check.computed()
        + ", deviation "
        + check.deviation()
        + ", "
        + check.tolerance()
        + "; source: "
        + check.source();
  }
}
