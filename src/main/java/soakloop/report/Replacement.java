package soakloop.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Puts new contents in the place of a folder's files, all or none. Complete files are written under
 * temporary names and the old ones are copied first, so that a full disk is met before anything has
 * changed; then each new file takes its place in one step, so that a reader finds the old or the
 * new, never a part; whatever fails is undone. A program that is asked to end while this goes on
 * ends after it.
 */
final class Replacement {
  private final Path folder;
  private final Mover mover;
  private final Temporary temporary = Temporary.next();
  private final Map<Path, Path> copies = new LinkedHashMap<>();
  private final Set<Path> touched = new LinkedHashSet<>();

  /** Moves a file to where another may stand, which it replaces. */
  interface Mover {
    /** Moves in one step: whoever looks finds the old file or the new one. */
    Mover ATOMIC = (from, to) -> Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);

    void move(Path from, Path to) throws IOException;
  }

  private Replacement(Path folder, Mover mover) {
    this.folder = folder;
    this.mover = mover;
  }

  /**
   * Replaces files.
   *
   * @param folder where
   * @param first by file name, put in place before anything else; may be replaced again by {@code
   *     contents}
   * @param contents by file name, put in place in this order
   * @param gone names of files that are to go, if there
   * @param mover puts the new files in place
   * @throws IOException if anything fails; the folder then holds what it held before
   */
  static void run(
      Path folder,
      Map<String, byte[]> first,
      Map<String, byte[]> contents,
      List<String> gone,
      Mover mover)
      throws IOException {
    Replacement replacement = new Replacement(folder, mover);
    EndHeldOff held = EndHeldOff.start();
    try {
      replacement.place(first, contents, gone);
    } catch (IOException | RuntimeException e) {
      replacement.undo(e);
      throw e;
    } finally {
      replacement.tidy(first.keySet(), contents.keySet());
      held.letGo();
    }
  }

  private void place(Map<String, byte[]> first, Map<String, byte[]> contents, List<String> gone)
      throws IOException {
    write(first, Temporary.Role.FIRST);
    write(contents, Temporary.Role.NEW);
    Set<String> names = new LinkedHashSet<>(first.keySet());
    names.addAll(contents.keySet());
    names.addAll(gone);
    for (String name : names) {
      copy(name);
    }
    for (String name : first.keySet()) {
      move(name, Temporary.Role.FIRST);
    }
    for (String name : gone) {
      touched.add(folder.resolve(name));
      Files.deleteIfExists(folder.resolve(name));
    }
    for (String name : contents.keySet()) {
      move(name, Temporary.Role.NEW);
    }
  }

  private void write(Map<String, byte[]> contents, Temporary.Role role) throws IOException {
    for (Map.Entry<String, byte[]> file : contents.entrySet()) {
      Files.write(
          temporary.file(folder, file.getKey(), role),
          file.getValue(),
          StandardOpenOption.CREATE_NEW);
    }
  }

  private void copy(String name) throws IOException {
    Path target = folder.resolve(name);
    if (Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
      Path old = temporary.file(folder, name, Temporary.Role.OLD);
      copies.put(target, old);
      Files.copy(target, old, StandardCopyOption.COPY_ATTRIBUTES, LinkOption.NOFOLLOW_LINKS);
    }
  }

  private void move(String name, Temporary.Role role) throws IOException {
    Path target = folder.resolve(name);
    touched.add(target);
    mover.move(temporary.file(folder, name, role), target);
  }

  private void undo(Exception failure) {
    for (Path target : touched) {
      Path old = copies.get(target);
      if (old == null) {
        attempt(failure, () -> Files.deleteIfExists(target));
      } else {
        // A copy that cannot go back is the only one left: it stays.
        copies.remove(target);
        attempt(failure, () -> Files.move(old, target, StandardCopyOption.REPLACE_EXISTING));
      }
    }
  }

  private void tidy(Set<String> first, Set<String> contents) {
    Exception unheard = new IOException("left behind");
    for (String name : first) {
      attempt(
          unheard, () -> Files.deleteIfExists(temporary.file(folder, name, Temporary.Role.FIRST)));
    }
    for (String name : contents) {
      attempt(
          unheard, () -> Files.deleteIfExists(temporary.file(folder, name, Temporary.Role.NEW)));
    }
    for (Path old : copies.values()) {
      attempt(unheard, () -> Files.deleteIfExists(old));
    }
  }

  private static void attempt(Exception failure, Step step) {
    try {
      step.run();
    } catch (IOException e) {
      failure.addSuppressed(e);
    }
  }

  /** Something with files that may fail. */
  private interface Step {
    void run() throws IOException;
  }
}
