package soakloop.scenario;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * One way to break the good scenario or its log, and what must be said of it.
 *
 * @param what what is broken
 * @param scenario edits of the scenario
 * @param log edits of the log
 * @param messages everything that must be said, in order
 */
public record BadCase(String what, List<Edit> scenario, List<Edit> log, List<String> messages) {
  /** Where the good scenario, its log and the cases are. */
  public static final Path FOLDER =
      Path.of(System.getProperty("basedir", ""), "src/test/resources/soakloop/bad");

  /**
   * Lines that go, and lines that come in their place.
   *
   * @param out lines that go; if none, the others come at the end
   * @param in lines that come
   */
  record Edit(List<String> out, List<String> in) {}

  @Override
  public String toString() {
    return what;
  }

  /** Returns all cases. */
  public static List<BadCase> all() {
    List<BadCase> cases = new ArrayList<>();
    for (String text : read(FOLDER.resolve("cases.txt")).split("\n*## ")) {
      if (!text.isBlank()) {
        cases.add(one(text.lines().toList()));
      }
    }
    return cases;
  }

  /**
   * Writes the broken scenario and log.
   *
   * @param folder where
   * @return the scenario's file
   */
  public Path write(Path folder) throws IOException {
    Path file = folder.resolve("bad.yaml");
    Files.writeString(file, edited(read(FOLDER.resolve("good.yaml")), scenario));
    Files.writeString(folder.resolve("good.csv"), edited(read(FOLDER.resolve("good.csv")), log));
    return file;
  }

  private static BadCase one(List<String> lines) {
    List<Edit> scenario = new ArrayList<>();
    List<Edit> log = new ArrayList<>();
    List<String> messages = new ArrayList<>();
    for (String line : lines.subList(1, lines.size())) {
      if (line.startsWith("> ")) {
        messages.add(line.substring(2));
      } else if (line.startsWith("log")) {
        edit(log, line.substring(3));
      } else if (!line.isEmpty()) {
        edit(scenario, line);
      }
    }
    return new BadCase(lines.get(0), scenario, log, messages);
  }

  private static void edit(List<Edit> edits, String line) {
    String text = line.length() > 2 ? line.substring(2) : "";
    Edit last = edits.isEmpty() ? null : edits.get(edits.size() - 1);
    boolean goes = line.startsWith("-");
    if (last == null || (goes && !last.in().isEmpty())) {
      last = new Edit(new ArrayList<>(), new ArrayList<>());
      edits.add(last);
    }
    (goes ? last.out() : last.in())
        .add(text.replace("\\t", "\t").replace("\\0", "\0").replace("\\e", ""));
  }

  private static String edited(String text, List<Edit> edits) {
    String changed = text;
    for (Edit edit : edits) {
      String in = String.join("\n", edit.in()) + "\n";
      String out = edit.out().isEmpty() ? "" : String.join("\n", edit.out()) + "\n";
      int at = out.isEmpty() ? changed.length() : ("\n" + changed).indexOf("\n" + out);
      if (at < 0) {
        throw new IllegalArgumentException("the good file has no lines\n" + out);
      }
      changed = changed.substring(0, at) + in + changed.substring(at + out.length());
    }
    return changed;
  }

  static String read(Path file) {
    try {
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
