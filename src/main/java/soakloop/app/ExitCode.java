package soakloop.app;

/** How the program ends. */
enum ExitCode {
  /** Done. */
  DONE(0),
  /** A fault of this program. */
  FAULT(1),
  /** The input is wrong. */
  INPUT(2),
  /** The run could not finish. */
  UNFINISHED(3);

  private final int code;

  ExitCode(int code) {
    this.code = code;
  }

  int code() {
    return code;
  }
}
