package soakloop.scenario;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import soakloop.quantity.UnitSystem;
import soakloop.rig.Day;
import soakloop.rig.Rig;
import soakloop.session.Drive;
import soakloop.session.Phase;
import soakloop.session.Session;
import soakloop.session.Start;

/** Reads scenarios. */
public final class ScenarioReader {
  private ScenarioReader() {}

  /**
   * Reads a scenario file and the log it names.
   *
   * @param file YAML, UTF-8
   * @return the checked scenario
   * @throws ScenarioException with everything that is wrong with it
   */
  public static Scenario read(Path file) throws ScenarioException {
    String shown = file.toString();
    Path fileName = file.getFileName();
    String name = fileName == null ? shown : fileName.toString().replaceFirst("\\.ya?ml$", "");
    Path folder = file.toAbsolutePath().getParent();
    return read(
        Source.of(
            name,
            shown,
            folder == null ? file.toAbsolutePath() : folder,
            YamlText.sections(text(file, shown), shown)));
  }

  /**
   * Reads a scenario from a text.
   *
   * @param name its short name, also used in messages
   * @param text YAML
   * @param folder what the log's file name is relative to
   * @return the checked scenario
   * @throws ScenarioException with everything that is wrong with it
   */
  public static Scenario parse(String name, String text, Path folder) throws ScenarioException {
    return read(Source.of(name, name, folder, YamlText.sections(text, name)));
  }

  static Scenario read(Source source) throws ScenarioException {
    return read(source, new Context(source.file(), source.quantities(), source.problems()));
  }

  static Scenario read(Source source, Context context) throws ScenarioException {
    In root = In.root(context, source.root());
    Optional<Scenario> scenario = Optional.empty();
    try {
      scenario = scenario(source, context, root);
      root.done();
    } catch (IllegalArgumentException e) {
      // A combination that no single key's range rules out.
      if (!context.hasProblems()) {
        context.problem(Mark.NONE, "", "cannot be: " + e.getMessage());
      }
      root.brokenOff();
    }
    if (context.hasProblems() || scenario.isEmpty()) {
      throw new ScenarioException(context.problems());
    }
    return scenario.get();
  }

  private static Optional<Scenario> scenario(Source source, Context context, In root) {
    Optional<String> title = root.text("title");
    Optional<String> about = root.text("about");
    VariantsReader.check(root);
    UnitSystem units = root.choice("units").equals("us") ? UnitSystem.US : UnitSystem.METRIC;
    Day day = day(root);
    Optional<Scenario.Logged> logged =
        new LogSectionReader(root, source, barometer(root, day)).read();
    In limits = root.section("limits");
    OptionalDouble charge = limits.optional("charge-temperature");
    limits.done();
    Start start = start(root);
    Rig rig = new RigReader(root, day).read();
    Scenario.Output output = OutputReader.read(root);
    List<Phase> phases = new SessionReader(root, rig, day, output.power(), logged).read();
    if (phases.isEmpty()) {
      return Optional.empty();
    }
    Session session = new Session(phases);
    Optional<FitRecord> fitted = new FitRecordReader(root, context.values()).read();
    return Optional.of(
        new Scenario(
            source.name(),
            title.orElse(source.name()),
            about.orElse(""),
            units,
            day,
            rig,
            start,
            session,
            new Scenario.Limits(charge),
            output,
            logged.map(l -> placed(l, session, root)),
            context.values(),
            context.assumed(),
            fitted,
            source));
  }

  /** Returns the log in its place in time: a replay says itself where it begins. */
  private static Scenario.Logged placed(Scenario.Logged logged, Session session, In root) {
    double time = session.startTime();
    for (Phase phase : session.phases()) {
      if (phase.drive() instanceof Drive.Replay replay) {
        double startsAt = replay.from() - time;
        In in = root.section("log");
        if (in.has("starts-at") && Math.abs(logged.startsAt() - startsAt) > 1e-6) {
          in.problem(
              "starts-at",
              "must agree with the replay, which makes it " + Wanted.seconds(startsAt));
        }
        return new Scenario.Logged(logged.reading(), startsAt);
      }
      time += phase.duration();
    }
    return logged;
  }

  /** Returns the day's pressure if the scenario states it, Pa. */
  private static OptionalDouble barometer(In root, Day day) {
    boolean stated = root.has("day") && root.section("day").has("pressure");
    return stated ? OptionalDouble.of(day.pressure()) : OptionalDouble.empty();
  }

  private static Day day(In root) {
    In in = root.section("day");
    Day day =
        new Day(
            in.number("temperature"),
            in.number("pressure"),
            in.number("humidity"),
            in.number("warming"));
    in.done();
    return day;
  }

  private static Start start(In root) {
    In in = root.section("start");
    Start start =
        new Start(in.optional("charge"), in.optional("loop-coolant"), in.number("engine-coolant"));
    in.done();
    return start;
  }

  static String text(Path file, String shown) throws ScenarioException {
    try {
      ByteBuffer bytes = ByteBuffer.wrap(content(file, shown));
      String text = StandardCharsets.UTF_8.newDecoder().decode(bytes).toString();
      return text.startsWith("\ufeff") ? text.substring(1) : text;
    } catch (CharacterCodingException e) {
      throw failure(shown, "is not UTF-8 text; save it as UTF-8");
    }
  }

  /**
   * Returns what a scenario's file holds, byte by byte.
   *
   * @param file the file
   * @throws ScenarioException if it is not there, may not be read or is too large
   */
  public static byte[] content(Path file) throws ScenarioException {
    return content(file, file.toString());
  }

  private static byte[] content(Path file, String shown) throws ScenarioException {
    try {
      if (Files.isDirectory(file)) {
        throw failure(shown, "is a folder, not a scenario file");
      }
      byte[] bytes = start(file, 4 * YamlText.MAX_LENGTH + 1);
      if (bytes.length > 4 * YamlText.MAX_LENGTH) {
        throw failure(shown, "is too large for a scenario");
      }
      return bytes;
    } catch (NoSuchFileException e) {
      throw failure(shown, "is not there; is the name right?");
    } catch (AccessDeniedException e) {
      throw failure(shown, "cannot be read: no right to read it");
    } catch (IOException e) {
      throw failure(shown, "cannot be read: " + e.getMessage());
    }
  }

  /** Reads no more than so much, whatever size the file has or claims; a device has no end. */
  private static byte[] start(Path file, int most) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return in.readNBytes(most);
    }
  }

  private static ScenarioException failure(String file, String message) {
    return new ScenarioException(List.of(new Problem(file, 0, 0, "", message)));
  }
}
