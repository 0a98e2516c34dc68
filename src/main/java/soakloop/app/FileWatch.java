package soakloop.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;

/**
 * Waits until files change. Their folders' notices only wake it: what counts is that a file's stamp
 * differs, and stamps are also compared from time to time, because some disks send no notices. So
 * it does not matter whether a program writes into the file or puts a new one in its place.
 */
final class FileWatch implements AutoCloseable {
  /** Most times that it waits for files to come to rest: one may be written without a pause. */
  private static final int MOST_WAITS = 20;

  private final WatchService notices;
  private final Duration quiet;
  private final Duration look;
  private final Map<Path, WatchKey> folders = new HashMap<>();
  private final Map<Path, Stamp> seen = new LinkedHashMap<>();

  /**
   * Makes a watch over no file yet.
   *
   * @param notices tells of changes in folders; closed with this
   * @param quiet how long the files must have been at rest
   * @param look time from one look at the files to the next where no notice comes
   */
  FileWatch(WatchService notices, Duration quiet, Duration look) {
    this.notices = notices;
    this.quiet = quiet;
    this.look = look;
  }

  /** Forgets every file. */
  void clear() {
    seen.clear();
  }

  /** Takes a file in, as it is now; it need not be there. To be called before it is read. */
  void add(Path file) {
    seen.put(file, Stamp.of(file));
  }

  /** Returns the files that are watched. */
  List<Path> files() {
    return List.copyOf(seen.keySet());
  }

  /**
   * Waits until at least one of the files is no longer as it was taken in, and then until they are
   * at rest.
   *
   * @return the files that differ
   * @throws InterruptedException if the thread is
   */
  List<Path> await() throws InterruptedException {
    while (true) {
      listen();
      if (!changed().isEmpty()) {
        rest();
        List<Path> changed = changed();
        if (!changed.isEmpty()) {
          return changed;
        }
      }
      WatchKey key = notices.poll(look.toMillis(), TimeUnit.MILLISECONDS);
      if (key != null) {
        key.pollEvents();
        if (!key.reset()) {
          folders.values().remove(key);
        }
      }
    }
  }

  private List<Path> changed() {
    List<Path> changed = new ArrayList<>();
    seen.forEach(
        (file, stamp) -> {
          if (!Stamp.of(file).equals(stamp)) {
            changed.add(file);
          }
        });
    return changed;
  }

  private void rest() throws InterruptedException {
    Map<Path, Stamp> before = now();
    for (int i = 0; i < MOST_WAITS; i++) {
      TimeUnit.MILLISECONDS.sleep(quiet.toMillis());
      Map<Path, Stamp> after = now();
      if (after.equals(before)) {
        return;
      }
      before = after;
    }
  }

  private Map<Path, Stamp> now() {
    Map<Path, Stamp> now = new HashMap<>();
    seen.keySet().forEach(file -> now.put(file, Stamp.of(file)));
    return now;
  }

  /** Asks for notices of the folders that are there; a folder may come and go. */
  private void listen() {
    Set<Path> wanted = new HashSet<>();
    for (Path file : seen.keySet()) {
      Path folder = file.toAbsolutePath().getParent();
      if (folder != null) {
        wanted.add(folder);
      }
    }
    folders.keySet().retainAll(wanted);
    for (Path folder : wanted) {
      if (!folders.containsKey(folder) && Files.isDirectory(folder)) {
        try {
          folders.put(
              folder,
              folder.register(
                  notices,
                  StandardWatchEventKinds.ENTRY_CREATE,
                  StandardWatchEventKinds.ENTRY_DELETE,
                  StandardWatchEventKinds.ENTRY_MODIFY));
        } catch (IOException e) {
          // No notices for this folder; the looks from time to time find what changes.
          folders.remove(folder);
        }
      }
    }
  }

  @Override
  public void close() throws IOException {
    notices.close();
  }
}
