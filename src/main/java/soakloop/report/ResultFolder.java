package soakloop.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import soakloop.fit.BandedRun;
import soakloop.fit.FitPlan;
import soakloop.fit.FitResult;
import soakloop.plan.EveningAnswer;
import soakloop.plan.SameStartAnswer;
import soakloop.plan.WaitAnswer;
import soakloop.study.Outcome;
import soakloop.study.Ranking;
import soakloop.study.Variation;
import soakloop.study.VaryPlan;
import soakloop.versus.VersusResult;

/**
 * A folder that receives results. A file that soakloop did not write there, or that was changed
 * since, is left alone unless forced; a writing that fails leaves everything as it was; one that is
 * killed midway is made good by the next.
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
    return write(BandedRun.plain(outcome), version);
  }

  /**
   * Writes the same with bands.
   *
   * @param run what a run gave and how well it is known
   * @param version of the program
   * @return the files written, the report first
   * @throws ResultException if they cannot be written or a strange file is in the way; whatever was
   *     there before is then as it was
   */
  public List<Path> write(BandedRun run, String version) throws ResultException {
    return write(new RunFiles(run, version, OptionalInt.empty()));
  }

  /**
   * Writes the same as {@link #write(BandedRun, String)}, with a page that an open browser loads
   * again and again.
   *
   * @param run what a run gave
   * @param version of the program
   * @param seconds from one loading of the page to the next, above 0
   * @return the files written, the report first
   * @throws ResultException if they cannot be written or a strange file is in the way; whatever was
   *     there before is then as it was
   */
  public List<Path> writeRefreshing(BandedRun run, String version, int seconds)
      throws ResultException {
    return write(new RunFiles(run, version, OptionalInt.of(seconds)));
  }

  /**
   * Writes {@code vary.html}, {@code vary.json}, {@code vary.csv} and the charts as PNG.
   *
   * @param variation what a plan gave
   * @param version of the program
   * @return the files written, the page first
   * @throws ResultException if they cannot be written or a strange file is in the way; whatever was
   *     there before is then as it was
   */
  public List<Path> write(Variation variation, String version) throws ResultException {
    return write(new VaryFiles(variation, version));
  }

  /**
   * Writes {@code rank.html}, {@code rank.json}, {@code rank.csv} and the chart as PNG.
   *
   * @param ranking what a plan gave
   * @param version of the program
   * @return the files written, the page first
   * @throws ResultException if they cannot be written or a strange file is in the way; whatever was
   *     there before is then as it was
   */
  public List<Path> write(Ranking ranking, String version) throws ResultException {
    return write(new RankFiles(ranking, version));
  }

  /**
   * Writes {@code wait.html}, {@code wait.json}, {@code wait.csv} and the chart as PNG.
   *
   * @param answer what a plan gave
   * @param version of the program
   * @return the files written, the page first
   * @throws ResultException if they cannot be written or a strange file is in the way; whatever was
   *     there before is then as it was
   */
  public List<Path> write(WaitAnswer answer, String version) throws ResultException {
    return write(new WaitFiles(answer, version));
  }

  /**
   * Writes {@code rounds.html}, {@code rounds.json} and {@code rounds.csv}.
   *
   * @param answer what a plan gave
   * @param version of the program
   * @return the files written, the page first
   * @throws ResultException if they cannot be written or a strange file is in the way; whatever was
   *     there before is then as it was
   */
  public List<Path> write(EveningAnswer answer, String version) throws ResultException {
    return write(new RoundsFiles(answer, version));
  }

  /**
   * Writes {@code log.html}, {@code log.json}, a clean CSV of each log and the charts as PNG.
   *
   * @param set the logs
   * @param starters texts of scenarios to begin with, by file name of letters, digits, dots and
   *     dashes
   * @param version of the program
   * @return the files written, the page first
   * @throws ResultException if they cannot be written or a strange file is in the way; whatever was
   *     there before is then as it was
   */
  public List<Path> write(LogSet set, Map<String, String> starters, String version)
      throws ResultException {
    return write(new LogFiles(set, starters, version));
  }

  /**
   * Writes {@code fit.html}, {@code fit.json}, {@code fit.csv}, the charts as PNG and fitted
   * scenarios.
   *
   * @param result what a fit gave
   * @param scenarios texts of fitted scenarios, by file name of letters, digits, dots and dashes
   * @param version of the program
   * @return the files written, the page first
   * @throws ResultException if they cannot be written or a strange file is in the way; whatever was
   *     there before is then as it was
   */
  public List<Path> write(FitResult result, Map<String, String> scenarios, String version)
      throws ResultException {
    return write(new FitFiles(result, scenarios, version));
  }

  /**
   * Writes {@code versus.html}, a page of it for a customer, {@code versus.json}, {@code
   * versus.csv} and the charts as PNG.
   *
   * @param result what a comparison gave
   * @param version of the program
   * @return the files written, the page first
   * @throws ResultException if they cannot be written or a strange file is in the way; whatever was
   *     there before is then as it was
   */
  public List<Path> write(VersusResult result, String version) throws ResultException {
    return write(new VersusFiles(result, version));
  }

  /**
   * Writes {@code dyno-day.html}, {@code dyno-day.json}, {@code dyno-day.csv} and the chart as PNG.
   *
   * @param answer what a plan of pulls that must start alike gave
   * @param version of the program
   * @return the files written, the page first
   * @throws ResultException if they cannot be written or a strange file is in the way; whatever was
   *     there before is then as it was
   */
  public List<Path> write(SameStartAnswer answer, String version) throws ResultException {
    return write(new SameStartFiles(answer, version));
  }

  /**
   * Makes sure, before such a plan, that its results could be written; changes nothing.
   *
   * @throws ResultException if a strange file is in the way or the folder cannot be used
   */
  public void requireRoomForDynoDay() throws ResultException {
    telling(
        () -> {
          check(SameStartFiles.NAMES);
          return List.of();
        });
  }

  /**
   * Makes sure, before a comparison, that its results could be written; changes nothing.
   *
   * @throws ResultException if a strange file is in the way or the folder cannot be used
   */
  public void requireRoomForVersus() throws ResultException {
    telling(
        () -> {
          check(VersusFiles.NAMES);
          return List.of();
        });
  }

  /**
   * Makes sure, before a fit, that its results could be written; changes nothing.
   *
   * @param plan what is to be fitted
   * @throws ResultException if a strange file is in the way or the folder cannot be used
   */
  public void requireRoom(FitPlan plan) throws ResultException {
    telling(
        () -> {
          check(FitFiles.names(plan.cases().size()));
          return List.of();
        });
  }

  /**
   * Returns where a file of a name is, or would be.
   *
   * @param name the file's
   */
  public Path file(String name) {
    return folder.resolve(name);
  }

  /**
   * Makes sure, before a ranking, that its results could be written; changes nothing.
   *
   * @throws ResultException if a strange file is in the way or the folder cannot be used
   */
  public void requireRoomForRanking() throws ResultException {
    telling(
        () -> {
          check(RankFiles.NAMES);
          return List.of();
        });
  }

  /**
   * Makes sure, before a plan of waits, that its results could be written; changes nothing.
   *
   * @throws ResultException if a strange file is in the way or the folder cannot be used
   */
  public void requireRoomForWait() throws ResultException {
    telling(
        () -> {
          check(WaitFiles.NAMES);
          return List.of();
        });
  }

  /**
   * Makes sure, before an evening is planned, that its results could be written; changes nothing.
   *
   * @throws ResultException if a strange file is in the way or the folder cannot be used
   */
  public void requireRoomForRounds() throws ResultException {
    telling(
        () -> {
          check(RoundsFiles.NAMES);
          return List.of();
        });
  }

  /**
   * Makes sure, before a long piece of work, that its results could be written; changes nothing.
   *
   * @param plan what is to be worked on
   * @throws ResultException if a strange file is in the way or the folder cannot be used
   */
  public void requireRoom(VaryPlan plan) throws ResultException {
    telling(
        () -> {
          check(VaryFiles.names(plan));
          return List.of();
        });
  }

  /**
   * Writes a part of a plan's results, which stands by itself: other parts, written at the same
   * time by other programs, are not touched.
   *
   * @param part what was worked on
   * @return the file written
   * @throws ResultException if it cannot be written or a file that is no part is in the way
   */
  public Path write(VaryPart part) throws ResultException {
    Path file = folder.resolve(part.fileName());
    telling(
        () -> {
          requirePlace();
          boolean there = Files.exists(file, LinkOption.NOFOLLOW_LINKS);
          if (Files.isDirectory(file, LinkOption.NOFOLLOW_LINKS)) {
            throw new ResultException(file + " is a folder and stands where a result is to go");
          }
          if (there && !force && !VaryPart.isPart(file)) {
            throw new ResultException(
                "soakloop did not write " + file + ": nothing was written; --force overwrites");
          }
          Files.createDirectories(folder);
          byte[] content = part.json().getBytes(StandardCharsets.UTF_8);
          Replacement.run(
              folder,
              Map.of(),
              Map.of(part.fileName(), content),
              List.of(),
              Replacement.Mover.ATOMIC);
          return List.of(file);
        });
    return file;
  }

  List<Path> write(ResultFiles files) throws ResultException {
    return telling(
        () -> {
          List<String> names = files.names();
          check(names);
          Map<String, byte[]> contents = new LinkedHashMap<>(Rendering.of(files));
          Files.createDirectories(folder);
          List<String> known = new ArrayList<>(files.everyName());
          known.add(Manifest.NAME);
          Temporary.sweep(folder, known);
          Manifest before = Manifest.read(folder);
          Manifest after = Manifest.of(contents).besides(before, files.everyName());
          contents.put(Manifest.NAME, after.content());
          Replacement.run(
              folder,
              Map.of(Manifest.NAME, before.or(after).content()),
              contents,
              stale(before, files),
              Replacement.Mover.ATOMIC);
          return names.stream().map(folder::resolve).toList();
        });
  }

  /** Something with files that may fail. */
  private interface Work {
    List<Path> run() throws IOException, ResultException;
  }

  private List<Path> telling(Work work) throws ResultException {
    try {
      return work.run();
    } catch (FileSystemException e) {
      String reason = e.getReason() == null ? "it cannot be made there" : e.getReason();
      throw ResultException.unwritten("cannot write results in " + folder + ": " + reason, e);
    } catch (IOException e) {
      throw ResultException.unwritten(
          "cannot write results in " + folder + ": " + e.getMessage(), e);
    }
  }

  /**
   * Returns earlier results of the kind that are not among these, as far as they are as written.
   */
  private List<String> stale(Manifest before, ResultFiles files) throws IOException {
    List<String> names = files.names();
    List<String> stale = new ArrayList<>();
    for (String name : files.everyName()) {
      if (!names.contains(name) && before.isOurs(folder.resolve(name))) {
        stale.add(name);
      }
    }
    return stale;
  }
}
