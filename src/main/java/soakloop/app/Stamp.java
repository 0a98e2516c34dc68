package soakloop.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;

/**
 * What tells two states of a file apart without reading it.
 *
 * @param there whether there is a file
 * @param readable whether it may be read
 * @param modified when it was last written, ms since 1970; 0 if not there
 * @param size bytes; 0 if not there
 * @param identity of the file on its disk, which differs for a new file of the same name; empty
 *     where the platform has none
 */
record Stamp(boolean there, boolean readable, long modified, long size, String identity) {
  private static final Stamp NONE = new Stamp(false, false, 0, 0, "");

  /** Looks at a file. */
  static Stamp of(Path file) {
    try {
      BasicFileAttributes now = Files.readAttributes(file, BasicFileAttributes.class);
      return new Stamp(
          true,
          Files.isReadable(file),
          now.lastModifiedTime().toMillis(),
          now.size(),
          String.valueOf(now.fileKey()));
    } catch (IOException e) {
      return NONE;
    }
  }
}
