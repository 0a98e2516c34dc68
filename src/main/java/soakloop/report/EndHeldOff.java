package soakloop.report;

import java.io.IOException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Holds off the end of the program: one that is asked to end (SIGINT, SIGTERM) waits until it is
 * let go, though not for ever, so that a dead network disk cannot keep it alive.
 */
final class EndHeldOff {
  /** Longest wait, s. */
  private static final long LONGEST = 10;

  private final CountDownLatch done = new CountDownLatch(1);
  private final Thread hook = new Thread(this::await, "results");

  private EndHeldOff() {}

  /**
   * Starts.
   *
   * @throws IOException if the program is ending already: nothing should be begun then
   */
  static EndHeldOff start() throws IOException {
    EndHeldOff held = new EndHeldOff();
    try {
      Runtime.getRuntime().addShutdownHook(held.hook);
    } catch (IllegalStateException e) {
      throw new IOException("the program was asked to end", e);
    }
    return held;
  }

  private void await() {
    try {
      // Whether it was done in time makes no difference: the program ends.
      boolean unused = done.await(LONGEST, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Lets the program end. */
  void letGo() {
    done.countDown();
    try {
      Runtime.getRuntime().removeShutdownHook(hook);
    } catch (IllegalStateException e) {
      // The end has begun; the hook has just been let go.
      hook.interrupt();
    }
  }
}
