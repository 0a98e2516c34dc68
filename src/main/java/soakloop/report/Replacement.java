package soakloop.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/**
 * Puts new contents in the place of a folder's files, all or none: complete files under temporary
 * names first, then the old ones aside and the new ones in; whatever fails is undone.
 */
final class Replacement {
  private final Path folder;
  private final Mover mover;
  private final String mark = ".soakloop-" + UUID.randomUUID() + "-";
  private final Map<Path, Path> aside = new LinkedHashMap<>();
  private final List<Path> placed = new ArrayList<>();

  /** Moves a file. */
  interface Mover {
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
   * @param contents by file name, put in place in this order
   * @param gone names of files that are to go, if there
   * @param mover puts the new files in place
   * @throws IOException if anything fails; the folder then holds what it held before
   */
  static void run(Path folder, Map<String, byte[]> contents, List<String> gone, Mover mover)
      throws IOException {
    Replacement replacement = new Replacement(folder, mover);
    try {
      replacement.place(contents, gone);
    } catch (IOException | RuntimeException e) {
      replacement.undo(e);
      throw e;
    } finally {
      replacement.tidy(contents);
    }
  }

  private void place(Map<String, byte[]> contents, List<String> gone) throws IOException {
    for (Map.Entry<String, byte[]> file : contents.entrySet()) {
      Files.write(temporary(file.getKey()), file.getValue(), StandardOpenOption.CREATE_NEW);
    }
    for (String name : gone) {
      putAside(folder.resolve(name));
    }
    for (String name : contents.keySet()) {
      Path target = folder.resolve(name);
      putAside(target);
      placed.add(target);
      mover.move(temporary(name), target);
    }
  }

  private void putAside(Path target) throws IOException {
    if (Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
      Path old = folder.resolve(mark + target.getFileName() + ".old");
      Files.move(target, old);
      aside.put(target, old);
    }
  }

  private void undo(Exception failure) {
    for (Path target : placed) {
      attempt(failure, () -> Files.deleteIfExists(target));
    }
    aside.forEach(
        (target, old) ->
            attempt(failure, () -> Files.move(old, target, StandardCopyOption.REPLACE_EXISTING)));
    aside.clear();
  }

  private void tidy(Map<String, byte[]> contents) {
    Exception unheard = new IOException("left behind");
    for (String name : contents.keySet()) {
      attempt(unheard, () -> Files.deleteIfExists(temporary(name)));
    }
    for (Path old : aside.values()) {
      attempt(unheard, () -> Files.deleteIfExists(old));
    }
  }

  private Path temporary(String name) {
    return folder.resolve(mark + name + ".new");
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
