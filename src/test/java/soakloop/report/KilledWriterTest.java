package soakloop.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** However a program ends while it writes, its results are whole, or made good by the next run. */
@Tag("analytic")
class KilledWriterTest {
  private static final int ROUNDS = 5;

  @TempDir Path folder;

  private Process start() throws Exception {
    Process writer =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                RestlessWriter.class.getName(),
                folder.toString())
            .redirectErrorStream(true)
            .redirectOutput(
                new File(folder.toFile().getParentFile(), folder.getFileName() + ".txt"))
            .start();
    Path list = folder.resolve(Manifest.NAME);
    byte[] before = Files.exists(list) ? Files.readAllBytes(list) : new byte[0];
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
    while (!Files.exists(list) || java.util.Arrays.equals(before, Files.readAllBytes(list))) {
      assertTrue(writer.isAlive(), "the writer ended by itself");
      assertTrue(System.nanoTime() < end, "the writer writes nothing");
      Thread.sleep(5);
    }
    return writer;
  }

  private Set<String> names() throws IOException {
    Set<String> names = new TreeSet<>();
    try (var files = Files.list(folder)) {
      files.forEach(f -> names.add(f.getFileName().toString()));
    }
    return names;
  }

  private Set<Integer> generations() throws IOException {
    Set<Integer> found = new TreeSet<>();
    for (String name : names()) {
      if (!name.startsWith(".")) {
        found.add(RestlessWriter.Generation.of(Files.readString(folder.resolve(name))));
      }
    }
    return found;
  }

  private static Set<String> complete(int generation) {
    Set<String> names = new TreeSet<>(new RestlessWriter.Generation(generation).names());
    names.add(Manifest.NAME);
    return names;
  }

  @Test
  void askedToEndItLeavesOneWholeSet() throws Exception {
    Random random = new Random(1);
    for (int round = 0; round < ROUNDS; round++) {
      Process writer = start();
      assumeTrue(writer.supportsNormalTermination(), "this platform only kills");
      Thread.sleep(random.nextInt(40));
      writer.destroy();
      assertTrue(writer.waitFor(60, TimeUnit.SECONDS));
      Set<Integer> found = generations();
      assertEquals(1, found.size(), "generations " + found);
      assertEquals(complete(found.iterator().next()), names(), "nothing missing, nothing left");
      Manifest list = Manifest.read(folder);
      for (String name : names()) {
        assertTrue(name.equals(Manifest.NAME) || list.isOurs(folder.resolve(name)), name);
      }
    }
  }

  @Test
  void killedItLeavesWholeFilesAndTheNextRunMakesThemGood() throws Exception {
    Random random = new Random(2);
    for (int round = 0; round < ROUNDS; round++) {
      Process writer = start();
      Thread.sleep(random.nextInt(40));
      writer.destroyForcibly();
      assertTrue(writer.waitFor(60, TimeUnit.SECONDS));
      Set<Integer> found = generations();
      assertTrue(!found.isEmpty() && found.size() <= 2, "generations " + found);
      ResultFolder.at(folder, false).write(new RestlessWriter.Generation(round));
      assertEquals(complete(round), names(), "nothing missing, nothing left");
      assertEquals(Set.of(round), generations());
    }
  }

  @Test
  void everyPointOfDeathIsMadeGood() throws Exception {
    List<String> order = new RestlessWriter.Generation(0).names();
    for (int moves = 0; moves <= order.size(); moves++) {
      ResultFolder.at(folder, true).write(new RestlessWriter.Generation(2));
      // What a writer that was killed after so many moves leaves.
      Manifest before = Manifest.read(folder);
      RestlessWriter.Generation next = new RestlessWriter.Generation(4);
      Manifest after = Manifest.of(Rendering.of(next));
      Files.write(folder.resolve(Manifest.NAME), before.or(after).content());
      for (String name : order.subList(0, moves)) {
        Files.write(folder.resolve(name), Rendering.of(next).get(name));
      }
      ResultFolder.at(folder, false).write(new RestlessWriter.Generation(5));
      assertEquals(complete(5), names());
      assertEquals(Set.of(5), generations());
    }
  }

  @Test
  void leftoversOfOthersStay() throws Exception {
    long alive = ProcessHandle.current().parent().map(ProcessHandle::pid).orElse(1L);
    assumeTrue(ProcessHandle.of(alive).isPresent());
    String drawn = "01234567-89ab-cdef-0123-456789abcdef";
    Path running = folder.resolve(".soakloop-" + alive + "-" + drawn + "-1-page.html.new");
    Path dead = folder.resolve(".soakloop-999999999999-" + drawn + "-1-page.html.old");
    Path part = folder.resolve(".soakloop-999999999999-" + drawn + "-1-vary-part-1-of-2.json.new");
    Path mine = folder.resolve(".soakloop-notes");
    for (Path file : List.of(running, dead, part, mine)) {
      Files.writeString(file, "x");
    }
    ResultFolder.at(folder, false).write(new RestlessWriter.Generation(0));
    Set<String> expected = complete(0);
    for (Path file : List.of(running, part, mine)) {
      expected.add(file.getFileName().toString());
    }
    assertEquals(expected, names());
  }
}
