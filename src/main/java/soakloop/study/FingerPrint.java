package soakloop.study;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Set;
import java.util.TreeSet;
import soakloop.log.Log;
import soakloop.log.Signal;
import soakloop.scenario.Scenario;

/** Tells whether two scenarios or logs are the same, by SHA-256 in hexadecimal. */
public final class FingerPrint {
  private FingerPrint() {}

  /**
   * Returns the print of a text or file.
   *
   * @param content its bytes
   */
  public static String of(byte[] content) {
    return HexFormat.of().formatHex(sha().digest(content));
  }

  /**
   * Returns the print of what a scenario's log holds, row by row; empty without a log.
   *
   * @param scenario which
   */
  public static String ofLog(Scenario scenario) {
    return scenario.logged().map(l -> of(l.log())).orElse("");
  }

  private static String of(Log log) {
    MessageDigest sha = sha();
    Set<Signal> signals = new TreeSet<>(log.signals());
    signals.forEach(s -> sha.update((s.key() + "\n").getBytes(StandardCharsets.UTF_8)));
    ByteBuffer cell = ByteBuffer.allocate(Double.BYTES);
    for (int row = 0; row < log.size(); row++) {
      sha.update(cell.putDouble(0, log.time(row)).array());
      for (Signal signal : signals) {
        sha.update(cell.putDouble(0, log.value(signal, row)).array());
      }
    }
    return HexFormat.of().formatHex(sha.digest());
  }

  private static MessageDigest sha() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
