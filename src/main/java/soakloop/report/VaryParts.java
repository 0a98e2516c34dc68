package soakloop.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import soakloop.study.VaryPlan;
import soakloop.study.VaryPoint;

/** All parts of a plan. */
public final class VaryParts {
  private final Map<Integer, VaryPart> parts;
  private final VaryPart first;

  private VaryParts(Map<Integer, VaryPart> parts, VaryPart first) {
    this.parts = parts;
    this.first = first;
  }

  /**
   * Reads every part in a folder, {@code vary-part-*.json}.
   *
   * @param folder where they are
   * @return all parts of one plan
   * @throws ResultException if there is none, one cannot be read, is there twice or is missing, or
   *     they do not go together
   */
  public static VaryParts in(Path folder) throws ResultException {
    Map<Integer, VaryPart> parts = new TreeMap<>();
    Map<Integer, Path> where = new TreeMap<>();
    for (Path file : files(folder)) {
      VaryPart part = VaryPart.read(file);
      Path other = where.putIfAbsent(part.part(), file);
      if (other != null) {
        throw new ResultException(
            "part " + part.part() + " is there twice: " + other + " and " + file);
      }
      parts.put(part.part(), part);
    }
    if (parts.isEmpty()) {
      throw new ResultException("there is no vary-part-*.json in " + folder);
    }
    VaryPart first = parts.values().iterator().next();
    for (Map.Entry<Integer, VaryPart> entry : parts.entrySet()) {
      requireAlike(first, entry.getValue(), where.getOrDefault(entry.getKey(), folder));
    }
    List<String> missing = new ArrayList<>();
    for (int i = 1; i <= first.of(); i++) {
      if (!parts.containsKey(i)) {
        missing.add(String.valueOf(i));
      }
    }
    if (!missing.isEmpty()) {
      throw new ResultException(
          "missing of " + first.of() + " parts in " + folder + ": " + String.join(", ", missing));
    }
    return new VaryParts(parts, first);
  }

  private static List<Path> files(Path folder) throws ResultException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(f -> f.getFileName().toString().matches("vary-part-.*\\.json"))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new ResultException("cannot read the folder " + folder + ": " + e.getMessage(), e);
    }
  }

  private static void requireAlike(VaryPart a, VaryPart b, Path where) throws ResultException {
    String differs = difference(a.origin(), b.origin());
    if (differs.isEmpty() && a.of() != b.of()) {
      differs = "number of parts";
    }
    if (!differs.isEmpty()) {
      throw new ResultException(
          where + " does not go with " + a.fileName() + ": it has another " + differs);
    }
  }

  private static String difference(VaryPart.Origin a, VaryPart.Origin b) {
    if (!a.scenario().equals(b.scenario())) {
      return "scenario";
    }
    if (!a.log().equals(b.log())) {
      return "log";
    }
    if (!a.asked().ranges().equals(b.asked().ranges())) {
      return "key or range";
    }
    if (!a.asked().equals(b.asked())) {
      return "result or limit";
    }
    return a.version().equals(b.version()) ? "" : "version of soakloop";
  }

  /** Returns the question that was asked. */
  public VaryPlan.Asked asked() {
    return first.origin().asked();
  }

  /**
   * Makes sure that the parts are of what they are about to be shown beside.
   *
   * @param scenario SHA-256 of the scenario's text
   * @param log SHA-256 of its log
   * @param version of the program
   * @throws ResultException if not
   */
  public void requireMadeFrom(String scenario, String log, String version) throws ResultException {
    String differs =
        difference(first.origin(), new VaryPart.Origin(version, scenario, log, asked()));
    if (!differs.isEmpty()) {
      throw new ResultException("the parts were made with another " + differs + "; make them anew");
    }
  }

  /**
   * Returns the points of all parts in order.
   *
   * @param plan which they must make full
   * @throws ResultException if they do not
   */
  public List<VaryPoint> points(VaryPlan plan) throws ResultException {
    List<VaryPoint> points = new ArrayList<>();
    for (VaryPart part : parts.values()) {
      for (VaryPoint point : part.points()) {
        boolean fits =
            !(point instanceof VaryPoint.Ran ran) || ran.values().size() == plan.measures().size();
        if (point.index() != points.size() || !fits) {
          throw new ResultException(part.fileName() + " is damaged: its points do not fit");
        }
        points.add(point);
      }
    }
    if (points.size() != plan.size()) {
      throw new ResultException(
          "the parts hold " + points.size() + " of " + plan.size() + " points: one is damaged");
    }
    return points;
  }
}
