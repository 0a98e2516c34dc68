package soakloop.log;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A file's text, or why it is none. The file is only read, and never held whole.
 *
 * @param file where
 * @param encoding how its characters are written
 * @param head its first characters, up to a whole line
 * @param whole whether that is all of it
 */
record LogText(Path file, TextEncoding encoding, String head, boolean whole) {
  private static final int HEAD_BYTES = 1 << 14;
  private static final int HEAD_CHARACTERS = 1 << 18;
  private static final char BYTE_ORDER_MARK = '\ufeff';

  /** Looks at the beginning of a file. */
  static LogText of(Path file, Problems problems) throws LogException {
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
      byte[] first = first(file);
      Optional<String> other = FileKind.notALog(first);
      if (other.isPresent()) {
        throw problems.only(other.get());
      }
      Optional<TextEncoding> encoding = TextEncoding.of(first);
      if (encoding.isEmpty()) {
        throw problems.only(
            "is not text (byte " + (indexOfZero(first) + 1) + " is NUL); export the log as CSV");
      }
      return head(file, encoding.get(), problems);
    } catch (IOException e) {
      throw problems.only("cannot be read: " + e.getMessage());
    }
  }

  private static LogText head(Path file, TextEncoding encoding, Problems problems)
      throws IOException, LogException {
    char[] buffer = new char[HEAD_CHARACTERS];
    int n = 0;
    boolean ended = false;
    try (Reader reader = open(file, encoding)) {
      while (n < buffer.length && !ended) {
        int got = reader.read(buffer, n, buffer.length - n);
        ended = got < 0;
        n += Math.max(0, got);
      }
      ended = ended || reader.read() < 0;
    }
    String text = new String(buffer, 0, n);
    if (text.isBlank()) {
      throw problems.only("is empty");
    }
    if (!ended) {
      int lastLine = Math.max(text.lastIndexOf('\n'), text.lastIndexOf('\r'));
      text = lastLine > 0 ? text.substring(0, lastLine + 1) : text;
    }
    return new LogText(file, encoding, text, ended);
  }

  /** Opens the whole text without its byte order mark. */
  Reader open() throws IOException {
    return open(file, encoding);
  }

  private static Reader open(Path file, TextEncoding encoding) throws IOException {
    InputStream in = Files.newInputStream(file);
    Reader reader =
        encoding == TextEncoding.BYTES
            ? new LenientReader(in)
            : new InputStreamReader(in, encoding.charset());
    java.io.PushbackReader text = new java.io.PushbackReader(reader, 1);
    int first = text.read();
    if (first >= 0 && first != BYTE_ORDER_MARK) {
      text.unread(first);
    }
    return text;
  }

  private static byte[] first(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return in.readNBytes(HEAD_BYTES);
    }
  }

  private static int indexOfZero(byte[] bytes) {
    int i = 0;
    while (i < bytes.length && bytes[i] != 0) {
      i++;
    }
    return i;
  }
}
