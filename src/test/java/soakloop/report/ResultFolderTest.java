package soakloop.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import soakloop.study.Outcome;

/** Nothing that soakloop did not write is lost, and nothing is half written. */
@Tag("analytic")
class ResultFolderTest {
  private static final Outcome FIVE = SampleOutcome.standard().make();
  private static final Outcome COOLING = SampleOutcome.standard().pulls(0).make();

  @TempDir Path temp;

  private static Map<String, String> everything(Path folder) throws IOException {
    Map<String, String> found = new TreeMap<>();
    try (var files = Files.list(folder)) {
      for (Path file : files.toList()) {
        boolean inner = Files.isDirectory(file);
        byte[] content = inner ? new byte[0] : Files.readAllBytes(file);
        found.put(file.getFileName().toString(), inner + " " + Arrays.hashCode(content));
      }
    }
    return found;
  }

  private static void write(Path folder, Outcome outcome) throws ResultException {
    ResultFolder.at(folder, false).write(outcome, "1.2.3");
  }

  private static String refused(Path folder, boolean force) {
    ResultException refusal =
        assertThrows(
            ResultException.class, () -> ResultFolder.at(folder, force).write(FIVE, "1.2.3"));
    return String.valueOf(refusal.getMessage());
  }

  @Test
  void writesEveryFileInAFolderItMakes() throws Exception {
    Path folder = temp.resolve("out/deep");
    List<Path> written = ResultFolder.at(folder, false).write(FIVE, "1.2.3");
    assertEquals(folder.resolve("report.html"), written.get(0));
    assertEquals(9, written.size());
    for (Path file : written) {
      assertTrue(Files.size(file) > 1000, file.toString());
    }
    assertEquals(10, everything(folder).size(), "the results and their list, nothing else");
  }

  @Test
  void ownResultsAreReplacedAndStaleOnesGo() throws Exception {
    write(temp, FIVE);
    write(temp, FIVE);
    assertTrue(Files.exists(temp.resolve("pull-by-pull.png")));
    write(temp, COOLING);
    assertFalse(Files.exists(temp.resolve("pull-by-pull.png")), "of the run before");
    assertEquals(7, everything(temp).size());
  }

  @Test
  void strangeFileIsNamedAndKept() throws Exception {
    Files.writeString(temp.resolve("summary.json"), "mine");
    Map<String, String> before = everything(temp);
    String message = refused(temp, false);
    assertTrue(message.contains("summary.json"), message);
    assertTrue(message.contains("--force"), message);
    assertEquals(before, everything(temp));
    ResultFolder.at(temp, true).write(FIVE, "1.2.3");
    assertTrue(Files.readString(temp.resolve("summary.json")).contains("\"writtenBy\""));
  }

  @Test
  void editedResultIsKept() throws Exception {
    write(temp, FIVE);
    Files.writeString(temp.resolve("trace.csv"), "time,my notes\n");
    Map<String, String> before = everything(temp);
    String message = refused(temp, false);
    assertTrue(message.contains("trace.csv") && !message.contains("report.html"), message);
    assertEquals(before, everything(temp));
  }

  @Test
  void editedStaleResultIsKept() throws Exception {
    write(temp, FIVE);
    Files.writeString(temp.resolve("pull-by-pull.png"), "edited");
    write(temp, COOLING);
    assertEquals("edited", Files.readString(temp.resolve("pull-by-pull.png")));
  }

  @Test
  void strangeListOfFilesIsKept() throws Exception {
    Files.writeString(temp.resolve(".soakloop"), "settings of something else\n");
    assertTrue(refused(temp, false).contains(".soakloop"));
    assertEquals("settings of something else\n", Files.readString(temp.resolve(".soakloop")));
  }

  @Test
  void folderInTheWayOfAFileStopsEvenByForce() throws Exception {
    write(temp, COOLING);
    Files.createDirectory(temp.resolve("charge-over-speed.png"));
    Map<String, String> before = everything(temp);
    String message = refused(temp, true);
    assertTrue(message.contains("charge-over-speed.png is a folder"), message);
    assertEquals(before, everything(temp));
  }

  @Test
  void fileInTheWayOfTheFolderIsSaidPlainly() throws Exception {
    Path file = Files.writeString(temp.resolve("out"), "mine");
    assertTrue(refused(file, true).contains("is not a folder"));
    String below = refused(file.resolve("deeper"), true);
    assertTrue(below.contains("out is not a folder"), below);
    assertEquals("mine", Files.readString(file));
  }

  @Test
  void failureMidwayPutsEverythingBack() throws Exception {
    Files.writeString(temp.resolve("a"), "old a");
    Files.writeString(temp.resolve("stale"), "old stale");
    Map<String, String> before = everything(temp);
    Map<String, byte[]> contents = new LinkedHashMap<>();
    contents.put("a", new byte[] {1});
    contents.put("b", new byte[] {2});
    Replacement.Mover failing =
        (from, to) -> {
          if (to.endsWith("b")) {
            throw new FileSystemException("the disk is gone");
          }
          Replacement.Mover.ATOMIC.move(from, to);
        };
    assertThrows(
        FileSystemException.class,
        () ->
            Replacement.run(
                temp, Map.of("a", new byte[] {0}), contents, List.of("stale"), failing));
    assertEquals(before, everything(temp));
    Replacement.run(temp, Map.of(), contents, List.of("stale"), Replacement.Mover.ATOMIC);
    assertEquals(List.of("a", "b"), List.copyOf(everything(temp).keySet()));
  }

  @Test
  void contentThatCannotBeWrittenLeavesNothingBehind() throws Exception {
    Files.writeString(temp.resolve("a"), "old a");
    Map<String, String> before = everything(temp);
    Map<String, byte[]> contents = new LinkedHashMap<>();
    contents.put("a", new byte[] {1});
    contents.put("no/such/place", new byte[] {2});
    assertThrows(
        FileSystemException.class,
        () -> Replacement.run(temp, Map.of(), contents, List.of(), Replacement.Mover.ATOMIC));
    assertEquals(before, everything(temp));
  }
}
