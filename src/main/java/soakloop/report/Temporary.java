package soakloop.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Names of the files that stand in a folder only while others are replaced: {@code .soakloop},
 * process, a number drawn by that process, count, name and role. They tell whose they are, so that
 * what a killed program left can be told from what a running one needs.
 *
 * @param mark what the names of one replacement begin with
 */
record Temporary(String mark) {
  private static final String DRAWN = UUID.randomUUID().toString();
  private static final AtomicLong COUNT = new AtomicLong();
  private static final Pattern NAME =
      Pattern.compile("\\.soakloop-(\\d{1,18})-([0-9a-f-]{36})-\\d+-(.+)\\.(new|old|first)");

  /** What a temporary file is for. */
  enum Role {
    /** Content to be put in place. */
    NEW,
    /** Copy of what was there. */
    OLD,
    /** Content to be put in place before all others. */
    FIRST
  }

  /** Returns names that no other replacement uses. */
  static Temporary next() {
    return new Temporary(
        ".soakloop-"
            + ProcessHandle.current().pid()
            + "-"
            + DRAWN
            + "-"
            + COUNT.incrementAndGet()
            + "-");
  }

  /** Returns the temporary file for one of a folder's files. */
  Path file(Path folder, String name, Role role) {
    return folder.resolve(mark + name + "." + role.name().toLowerCase(Locale.ROOT));
  }

  /**
   * Deletes what programs that no longer run left behind.
   *
   * @param folder where
   * @param names the files whose temporary ones may go; others belong to somebody else
   * @throws IOException if the folder cannot be read or a file not deleted
   */
  static void sweep(Path folder, List<String> names) throws IOException {
    try (var files = Files.newDirectoryStream(folder, ".soakloop-*")) {
      for (Path file : files) {
        Matcher matcher = NAME.matcher(file.getFileName().toString());
        if (matcher.matches()
            && names.contains(matcher.group(3))
            && isLeft(Long.parseLong(matcher.group(1)), matcher.group(2))) {
          Files.deleteIfExists(file);
        }
      }
    } catch (java.nio.file.DirectoryIteratorException e) {
      throw e.getCause();
    }
  }

  /** A process number is used again in time, so one's own tells nothing without the draw. */
  private static boolean isLeft(long process, String drawn) {
    return process == ProcessHandle.current().pid()
        ? !drawn.equals(DRAWN)
        : ProcessHandle.of(process).isEmpty();
  }
}
