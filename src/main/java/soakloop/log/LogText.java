package soakloop.log;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A file's text, or why it is none. The file is only read. */
final class LogText {
  /** Largest file taken, bytes: some 300 hours of ten signals at 10 Hz. */
  private static final long LARGEST = 512L << 20;

  private static final char BYTE_ORDER_MARK = '\ufeff';

  private LogText() {}

  /** Returns the text without its byte order mark. */
  static String read(Path file, Problems problems) throws LogException {
    byte[] bytes = bytes(file, problems);
    int nul = indexOf(bytes, 0);
    if (nul >= 0) {
      throw problems.only(
          startsAsUtf16(bytes)
              ? "is UTF-16 text; export the log as CSV in UTF-8"
              : "is not text (byte " + (nul + 1) + " is NUL); export the log as CSV");
    }
    CharBuffer text = CharBuffer.allocate(bytes.length);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
    CoderResult result = decoder.decode(in, text, true);
    if (result.isError()) {
      int at = in.position();
      throw problems.only(
          String.format(
              "row %d holds the byte 0x%02X, which is not UTF-8 text; export the log as CSV in"
                  + " UTF-8",
              rowOf(bytes, at), bytes[at] & 0xff));
    }
    String all = text.flip().toString();
    String plain = !all.isEmpty() && all.charAt(0) == BYTE_ORDER_MARK ? all.substring(1) : all;
    if (plain.isBlank()) {
      throw problems.only("is empty");
    }
    return plain;
  }

  private static byte[] bytes(Path file, Problems problems) throws LogException {
    if (Files.notExists(file)) {
      throw problems.only("there is no such file");
    }
    if (Files.isDirectory(file)) {
      throw problems.only("is a folder, not a file");
    }
    if (!Files.isRegularFile(file) || !Files.isReadable(file)) {
      throw problems.only("cannot be read");
    }
    try {
      long size = Files.size(file);
      if (size > LARGEST) {
        throw problems.only(
            "is too large (" + (size >> 20) + " MiB); allowed: " + (LARGEST >> 20) + " MiB");
      }
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw problems.only("cannot be read: " + e.getMessage());
    }
  }

  private static boolean startsAsUtf16(byte[] bytes) {
    int first = bytes[0] & 0xff;
    int second = bytes.length > 1 ? bytes[1] & 0xff : 0;
    return (first == 0xff && second == 0xfe) || (first == 0xfe && second == 0xff);
  }

  private static int indexOf(byte[] bytes, int wanted) {
    for (int i = 0; i < bytes.length; i++) {
      if (bytes[i] == wanted) {
        return i;
      }
    }
    return -1;
  }

  private static int rowOf(byte[] bytes, int position) {
    int row = 1;
    for (int i = 0; i < position; i++) {
      if (bytes[i] == '\n') {
        row++;
      }
    }
    return row;
  }
}
