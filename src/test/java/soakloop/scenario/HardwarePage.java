package soakloop.scenario;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Typical hardware: read from its table, printed as a page, and put into whole scenarios. */
final class HardwarePage {
  private static final String TABLE = "/soakloop/hardware.yaml";

  private static final String INTRO =
      """
      # Typical hardware

      Starting values for parts that nobody has measured yet: generic kinds, no maker's products. Take a
      line into your scenario, add what you know of yours, and narrow it by a log. All of it is common
      practice without a source unless the reason names one. Nine times in ten the true value lies within
      the spread. A test reads every line as a scenario; to write this page anew: `mvn test
      -Dtest=GeneratedPagesTest -Dsoakloop.write=true`.
      """;

  /** What a section cannot go without, in the scenarios that the test reads. */
  private static final Map<String, String> NEEDED =
      Map.of(
          "blower", "displacement: 1.7 L/rev, drive-ratio: 2.35",
          "core", "size: {length: 360 mm, width: 170 mm, thickness: 55 mm}");

  /**
   * One kind of a part.
   *
   * @param name what it is
   * @param section where it stands in a scenario
   * @param keys what is said there
   * @param because why
   * @param exact whether it has no spread because it is counted
   */
  record Kind(String name, String section, String keys, String because, boolean exact) {
    String line() {
      return section + ": {" + keys + "}";
    }

    /** Returns a whole scenario with it. */
    String scenario() {
      String needed = NEEDED.containsKey(section) ? NEEDED.get(section) + ", " : "";
      String rest = Scenarios.SHORT.replaceFirst("(?m)^" + section + ":.*\n", "");
      return rest.replace("loop: [pump, core]", loop()) + section + ": {" + needed + keys + "}\n";
    }

    private String loop() {
      return switch (section) {
        case "reservoir", "supply-hose", "heat-exchanger", "chiller" ->
            "loop: [pump, core, " + section + "]";
        case "airflow" ->
            "loop: [pump, core, heat-exchanger]\n"
                + "heat-exchanger: {face: {width: 640 mm, height: 320 mm}}";
        default -> "loop: [pump, core]";
      };
    }
  }

  /** Kinds that belong together. */
  record Group(String name, String about, List<Kind> kinds) {}

  private HardwarePage() {}

  static List<Group> groups() {
    try (InputStream in = HardwarePage.class.getResourceAsStream(TABLE)) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      List<Group> groups = new ArrayList<>();
      for (Node node : ((Node.Items) YamlText.parse(text, TABLE)).items()) {
        Node.Section group = (Node.Section) node;
        List<Kind> kinds = new ArrayList<>();
        for (Node item : ((Node.Items) group.find("kinds").orElseThrow().value()).items()) {
          kinds.add(kind((Node.Section) item));
        }
        groups.add(new Group(text(group, "group"), text(group, "about"), List.copyOf(kinds)));
      }
      return groups;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (ScenarioException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Kind kind(Node.Section item) {
    String face = item.find("face").isPresent() ? text(item, "face") + ", " : "";
    return new Kind(
        text(item, "kind"),
        text(item, "section"),
        face + text(item, "keys"),
        text(item, "because"),
        item.find("exact").isPresent());
  }

  private static String text(Node.Section section, String key) {
    return Optional.of(section.find(key).orElseThrow().value())
        .map(node -> ((Node.Scalar) node).text())
        .orElseThrow();
  }

  static String render() {
    StringBuilder page = new StringBuilder(INTRO);
    for (Group group : groups()) {
      page.append("\n## ").append(group.name()).append("\n\n").append(group.about());
      page.append("\n\n| Kind | Say | Why |\n|---|---|---|\n");
      for (Kind kind : group.kinds()) {
        page.append("| ").append(kind.name());
        page.append(" | `").append(kind.line());
        page.append("` | ").append(kind.because()).append(" |\n");
      }
    }
    return page.toString();
  }
}
