package soakloop.app;

/** Entry point. */
public final class Main {
  private Main() {}

  /**
   * Runs the command line.
   *
   * @param args command-line arguments
   */
  public static void main(String[] args) {
    System.out.println("soakloop");
  }
}
