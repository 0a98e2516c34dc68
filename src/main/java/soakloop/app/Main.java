package soakloop.app;

import picocli.CommandLine;

/** Entry point. */
public final class Main {
  private Main() {}

  /**
   * Runs the command line and exits with its code.
   *
   * @param args command-line arguments
   */
  public static void main(String[] args) {
    System.setProperty("java.awt.headless", "true");
    // Since Java 22 there is a console even in a pipe, unless it is asked for so.
    System.setProperty("jdk.console", "java.base");
    System.exit(commandLine().execute(args));
  }

  /** Returns the command line with its error handling. */
  static CommandLine commandLine() {
    CommandLine line = new CommandLine(new Soakloop());
    line.setExecutionExceptionHandler(new Failures());
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setUsageHelpAutoWidth(false);
    return line;
  }
}
