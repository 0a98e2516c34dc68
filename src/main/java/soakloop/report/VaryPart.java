package soakloop.report;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soakloop.study.VaryPlan;
import soakloop.study.VaryPoint;

/**
 * One share of a plan's runs, to be put together with the others later.
 *
 * @param origin what it was made from
 * @param part number of the share, from 1
 * @param of how many shares there are
 * @param points the share's points, in order
 */
public record VaryPart(Origin origin, int part, int of, List<VaryPoint> points) {
  private static final Gson GSON =
      new GsonBuilder().disableHtmlEscaping().setPrettyPrinting().create();
  private static final String KIND = "vary part";

  /**
   * What a part was made from; parts of different origins do not go together.
   *
   * @param version of the program
   * @param scenario SHA-256 of the scenario's text
   * @param log SHA-256 of what its log holds; empty without one
   * @param asked the question
   */
  public record Origin(String version, String scenario, String log, VaryPlan.Asked asked) {}

  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if there is no such part
   */
  public VaryPart {
    if (!(part >= 1 && part <= of)) {
      throw new IllegalArgumentException("no part " + part + " of " + of);
    }
    points = List.copyOf(points);
  }

  /**
   * Returns the index at which a part begins, or the size for the part after the last.
   *
   * @param part from 1
   * @param of how many parts there are
   * @param size number of points in all
   */
  public static int from(int part, int of, int size) {
    return (int) ((long) (part - 1) * size / of);
  }

  /** Returns the name of its file. */
  public String fileName() {
    return "vary-part-" + part + "-of-" + of + ".json";
  }

  /** Returns the file's text. */
  String json() {
    JsonObject top = new JsonObject();
    top.addProperty("writtenBy", "soakloop");
    top.addProperty("kind", KIND);
    top.addProperty("version", origin.version());
    top.addProperty("scenarioSha256", origin.scenario());
    top.addProperty("logSha256", origin.log());
    top.add("keys", GSON.toJsonTree(origin.asked().ranges()));
    top.add("results", GSON.toJsonTree(origin.asked().results()));
    top.add("limits", GSON.toJsonTree(origin.asked().limits()));
    top.addProperty("part", part);
    top.addProperty("of", of);
    JsonArray list = new JsonArray();
    points.forEach(point -> list.add(json(point)));
    top.add("points", list);
    return GSON.toJson(top) + "\n";
  }

  private static JsonObject json(VaryPoint point) {
    JsonObject o = new JsonObject();
    o.addProperty("index", point.index());
    if (point instanceof VaryPoint.Ran ran) {
      o.add("values", GSON.toJsonTree(ran.values()));
      ran.lastPull().ifPresent(course -> o.add("lastPull", json(course)));
    } else if (point instanceof VaryPoint.Hole hole) {
      o.addProperty("failed", hole.reason());
    }
    return o;
  }

  private static JsonObject json(VaryPoint.Course course) {
    JsonObject o = new JsonObject();
    o.add("times", GSON.toJsonTree(course.times()));
    o.add("values", GSON.toJsonTree(course.values()));
    return o;
  }

  /**
   * Reads a part's file.
   *
   * @param file which
   * @return the part
   * @throws ResultException if it is none
   */
  public static VaryPart read(Path file) throws ResultException {
    try {
      JsonObject top =
          GSON.fromJson(Files.readString(file, StandardCharsets.UTF_8), JsonObject.class);
      if (top == null || !top.has("kind") || !top.get("kind").getAsString().equals(KIND)) {
        throw new ResultException(file + " is no part of a vary");
      }
      List<VaryPoint> points = new ArrayList<>();
      for (JsonElement point : top.getAsJsonArray("points")) {
        points.add(point(point.getAsJsonObject()));
      }
      Origin origin =
          new Origin(
              top.get("version").getAsString(),
              top.get("scenarioSha256").getAsString(),
              top.get("logSha256").getAsString(),
              new VaryPlan.Asked(
                  strings(top, "keys"), strings(top, "results"), strings(top, "limits")));
      return new VaryPart(origin, top.get("part").getAsInt(), top.get("of").getAsInt(), points);
    } catch (IOException e) {
      throw new ResultException("cannot read " + file + ": " + e.getMessage(), e);
    } catch (JsonParseException
        | IllegalArgumentException
        | IllegalStateException
        | ClassCastException
        | UnsupportedOperationException
        | NullPointerException e) {
      throw new ResultException(file + " is a damaged part of a vary", e);
    }
  }

  /** Returns whether a file is a part. */
  static boolean isPart(Path file) {
    try {
      read(file);
      return true;
    } catch (ResultException e) {
      return false;
    }
  }

  private static VaryPoint point(JsonObject o) {
    int index = o.get("index").getAsInt();
    if (o.has("failed")) {
      return new VaryPoint.Hole(index, o.get("failed").getAsString());
    }
    Optional<VaryPoint.Course> course =
        o.has("lastPull")
            ? Optional.of(
                new VaryPoint.Course(
                    numbers(o.getAsJsonObject("lastPull").getAsJsonArray("times")),
                    numbers(o.getAsJsonObject("lastPull").getAsJsonArray("values"))))
            : Optional.empty();
    return new VaryPoint.Ran(index, numbers(o.getAsJsonArray("values")), course);
  }

  private static List<Double> numbers(JsonArray array) {
    List<Double> numbers = new ArrayList<>();
    array.forEach(e -> numbers.add(e.getAsDouble()));
    return numbers;
  }

  private static List<String> strings(JsonObject top, String key) {
    List<String> strings = new ArrayList<>();
    top.getAsJsonArray(key).forEach(e -> strings.add(e.getAsString()));
    return strings;
  }
}
