package soakloop.log;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;

/** Reads UTF-8 and takes every byte that is none as Latin-1. */
final class LenientReader extends Reader {
  private static final int BUFFER = 1 << 16;

  private final InputStream in;
  private final CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
  private final ByteBuffer bytes = ByteBuffer.allocate(BUFFER).flip();
  private boolean ended;

  LenientReader(InputStream in) {
    this.in = in;
  }

  @Override
  public int read(char[] buffer, int offset, int length) throws IOException {
    if (length == 0) {
      return 0;
    }
    CharBuffer out = CharBuffer.wrap(buffer, offset, length);
    while (true) {
      CoderResult result = decoder.decode(bytes, out, ended);
      if (result.isError() && out.hasRemaining()) {
        out.put((char) (bytes.get() & 0xff));
        continue;
      }
      int got = out.position() - offset;
      if (got > 0 || result.isOverflow()) {
        if (got == 0) {
          // A character of two halves does not fit a buffer of one: leave the sign for it.
          skipOne();
          buffer[offset] = '\ufffd';
          return 1;
        }
        return got;
      }
      if (ended && !bytes.hasRemaining()) {
        return -1;
      }
      fill();
    }
  }

  private void skipOne() {
    do {
      bytes.get();
    } while (bytes.hasRemaining() && (bytes.get(bytes.position()) & 0xc0) == 0x80);
  }

  private void fill() throws IOException {
    bytes.compact();
    int got = in.read(bytes.array(), bytes.position(), bytes.remaining());
    if (got < 0) {
      ended = true;
    } else {
      bytes.position(bytes.position() + got);
    }
    bytes.flip();
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
