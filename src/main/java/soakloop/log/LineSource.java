package soakloop.log;

import java.io.Closeable;
import java.io.IOException;
import java.io.Reader;
import java.util.Optional;

/** Parts a text into its lines, each with what ends it; a very long line comes in pieces. */
final class LineSource implements Closeable {
  private final Reader in;
  private final int longest;
  private final char[] buffer = new char[1 << 13];
  private int at;
  private int filled;

  LineSource(Reader in, int longest) {
    this.in = in;
    this.longest = longest;
  }

  /** Returns the next line; empty at the end. */
  Optional<String> next() throws IOException {
    StringBuilder line = new StringBuilder();
    while (line.length() < longest && fill()) {
      int from = at;
      int most = Math.min(filled, from + longest - line.length());
      while (at < most && buffer[at] != '\n' && buffer[at] != '\r') {
        at++;
      }
      boolean ended = at < most;
      if (ended) {
        at++;
      }
      line.append(buffer, from, at - from);
      if (ended) {
        if (buffer[at - 1] == '\r' && fill() && buffer[at] == '\n') {
          line.append(buffer[at++]);
        }
        break;
      }
    }
    return line.length() == 0 ? Optional.empty() : Optional.of(line.toString());
  }

  private boolean fill() throws IOException {
    if (at == filled) {
      at = 0;
      filled = Math.max(0, in.read(buffer, 0, buffer.length));
    }
    return at < filled;
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
