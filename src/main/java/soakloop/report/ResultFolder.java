package soakloop.report;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import soakloop.study.Outcome;

/**
 * A folder that receives results. A file that soakloop did not write there, or that was changed
 * since, is left alone unless forced; a writing that fails leaves everything as it was.
 */
public final class ResultFolder {
  private final Path folder;
  private final boolean force;

  private ResultFolder(Path folder, boolean force) {
    this.folder = folder;
    this.force = force;
  }

  /**
   * Names a folder.
   *
   * @param folder made when results are written, if not there
   * @param force whether files that soakloop did not write may be overwritten
   */
  public static ResultFolder at(Path folder, boolean force) {
    return new ResultFolder(folder, force);
  }

  /** Makes sure that the folder is one and that nothing in it is in the way; changes nothing. */
  private void check(List<String> names) throws ResultException, IOException {
    requirePlace();
    Manifest before = Manifest.read(folder);
    List<String> strange = new ArrayList<>();
    for (String name : names) {
      Path file = folder.resolve(name);
      if (Files.isDirectory(file, LinkOption.NOFOLLOW_LINKS)) {
        throw new ResultException(file + " is a folder and stands where a result is to go");
      }
      if (Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !before.isOurs(file)) {
        strange.add(name);
      }
    }
    Path list = folder.resolve(Manifest.NAME);
    if (Files.exists(list, LinkOption.NOFOLLOW_LINKS) && !Manifest.isManifest(list)) {
      strange.add(Manifest.NAME);
    }
    if (!strange.isEmpty() && !force) {
      throw new ResultException(
          "soakloop did not write "
              + String.join(", ", strange)
              + " in "
              + folder
              + ", or it was changed since: nothing was written; --force overwrites");
    }
  }

  /** Makes sure that the folder is there and ours to write in, or can be made. */
  private void requirePlace() throws ResultException {
    Path place = folder.toAbsolutePath();
    while (!Files.exists(place, LinkOption.NOFOLLOW_LINKS) && place.getParent() != null) {
      place = place.getParent();
    }
    if (!Files.isDirectory(place)) {
      throw new ResultException(place + " is not a folder: results cannot go in " + folder);
    }
    if (!Files.isWritable(place)) {
      throw new ResultException("no right to write in " + place);
    }
  }

  /**
   * Writes {@code report.html}, {@code summary.json}, {@code trace.csv} and the charts as PNG.
   *
   * @param outcome what a run gave
   * @param version of the program
   * @return the files written, the report first
   * @throws ResultException if they cannot be written or a strange file is in the way; whatever was
   *     there before is then as it was
   */
  public List<Path> write(Outcome outcome, String version) throws ResultException {
    try {
      List<String> names = Rendering.names(outcome);
      check(names);
      Map<String, byte[]> contents = new LinkedHashMap<>(Rendering.of(outcome, version));
      Files.createDirectories(folder);
      Manifest before = Manifest.read(folder);
      contents.put(Manifest.NAME, Manifest.of(contents).content());
      Replacement.run(folder, contents, stale(before, names), Files::move);
      return names.stream().map(folder::resolve).toList();
    } catch (FileSystemException e) {
      String reason = e.getReason() == null ? "it cannot be made there" : e.getReason();
      throw new ResultException("cannot write results in " + folder + ": " + reason, e);
    } catch (IOException e) {
      throw new ResultException("cannot write results in " + folder + ": " + e.getMessage(), e);
    }
  }

  /** Returns earlier results that this outcome does not give, as far as they are as written. */
  private List<String> stale(Manifest before, List<String> names) throws IOException {
    List<String> stale = new ArrayList<>();
    for (String name : Rendering.everyName()) {
      if (!names.contains(name) && before.isOurs(folder.resolve(name))) {
        stale.add(name);
      }
    }
    return stale;
  }
}
