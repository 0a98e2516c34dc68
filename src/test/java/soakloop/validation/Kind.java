package soakloop.validation;

/** Where the expected value of a check comes from. */
enum Kind {
  PUBLISHED("published", "printed in a book, paper or standard, named beside the check"),
  LIBRARY("library", "computed with a public reference library of the stated version"),
  ANALYTIC("analytic", "an exact solution or identity of the equations"),
  MEASURED("published", "measured by others and published as open data"),
  TRADE("trade", "common practice of the trade, no source"),
  COMPUTED_ELSEWHERE(
      "library",
      "the same equations written a second time, in other software: finds slips of the pen, says"
          + " nothing about the physics");

  private final String tag;
  private final String meaning;

  Kind(String tag, String meaning) {
    this.tag = tag;
    this.meaning = meaning;
  }

  /** The JUnit tag under which checks of this kind run. */
  String tag() {
    return tag;
  }

  String meaning() {
    return meaning;
  }

  /** The name as printed in the table. */
  String label() {
    return name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
  }
}
