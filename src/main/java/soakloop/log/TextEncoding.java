package soakloop.log;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** How a file writes its characters, found by its first bytes. */
enum TextEncoding {
  /** UTF-8; a byte that is none is taken as Latin-1, so one rule reads both and their mixtures. */
  BYTES(StandardCharsets.UTF_8, ""),
  /** UTF-16, low byte first. */
  UTF_16LE(StandardCharsets.UTF_16LE, "UTF-16"),
  /** UTF-16, high byte first. */
  UTF_16BE(StandardCharsets.UTF_16BE, "UTF-16");

  private final Charset charset;
  private final String said;

  TextEncoding(Charset charset, String said) {
    this.charset = charset;
    this.said = said;
  }

  Charset charset() {
    return charset;
  }

  /** Returns its name where that is worth a word. */
  String said() {
    return said;
  }

  /**
   * Finds the encoding: by a byte order mark, else by where the zero bytes of plain letters stand.
   *
   * @param head first bytes of a file
   * @return empty if no text has such bytes
   */
  static Optional<TextEncoding> of(byte[] head) {
    if (head.length >= 2) {
      int first = head[0] & 0xff;
      int second = head[1] & 0xff;
      if (first == 0xff && second == 0xfe) {
        return Optional.of(UTF_16LE);
      }
      if (first == 0xfe && second == 0xff) {
        return Optional.of(UTF_16BE);
      }
    }
    int[] zeros = new int[2];
    for (int i = 0; i < head.length; i++) {
      zeros[i & 1] += head[i] == 0 ? 1 : 0;
    }
    if (zeros[0] + zeros[1] == 0) {
      return Optional.of(BYTES);
    }
    double half = head.length / 2.0;
    if (zeros[1] > 0.7 * half && zeros[0] < 0.05 * half) {
      return Optional.of(UTF_16LE);
    }
    if (zeros[0] > 0.7 * half && zeros[1] < 0.05 * half) {
      return Optional.of(UTF_16BE);
    }
    return Optional.empty();
  }
}
