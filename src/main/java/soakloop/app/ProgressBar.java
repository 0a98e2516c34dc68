package soakloop.app;

import java.io.PrintWriter;
import java.util.Locale;

/** A bar on the terminal that shows how far long work has come; nothing at all in a pipe. */
final class ProgressBar implements AutoCloseable {
  private static final int WIDTH = 40;

  private final PrintWriter out;
  private final boolean shown;
  private int last = -1;

  /**
   * Makes a bar.
   *
   * @param out where it is drawn
   * @param shown whether it is drawn at all
   */
  ProgressBar(PrintWriter out, boolean shown) {
    this.out = out;
    this.shown = shown;
  }

  /**
   * Returns a bar that is drawn if a person watches: if standard output, which it must be drawn on,
   * is a terminal.
   */
  @SuppressWarnings("SystemConsoleNull") // Main asks newer platforms for the older behaviour.
  static ProgressBar onTerminal(PrintWriter out) {
    return new ProgressBar(out, System.console() != null);
  }

  /** Draws how far it is. */
  void at(int done, int all) {
    int percent = (int) (100L * done / all);
    if (!shown || percent == last) {
      return;
    }
    last = percent;
    int full = percent * WIDTH / 100;
    String bar = "#".repeat(full) + ".".repeat(WIDTH - full);
    out.print(String.format(Locale.ROOT, "\r[%s] %3d %%, %d of %d runs", bar, percent, done, all));
    out.flush();
  }

  /** Draws which step it is at. */
  void step(int done, int all, String doing) {
    if (shown) {
      last = 100 * done / all;
      int full = done * WIDTH / all;
      String bar = "#".repeat(full) + ".".repeat(WIDTH - full);
      out.print(String.format(Locale.ROOT, "\r[%s] %-36s", bar, doing));
      out.flush();
    }
  }

  /** Wipes the bar. */
  @Override
  public void close() {
    if (shown && last >= 0) {
      out.print("\r" + " ".repeat(WIDTH + 40) + "\r");
      out.flush();
    }
  }
}
