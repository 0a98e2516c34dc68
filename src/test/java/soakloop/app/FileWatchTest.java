package soakloop.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.function.Supplier;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Changes are seen with and without notices from the disk. */
@Tag("analytic")
class FileWatchTest {
  private static final Duration LONG = Duration.ofSeconds(60);

  @TempDir private Path folder;

  private static FileWatch watch(Duration look) throws IOException {
    return new FileWatch(FileSystems.getDefault().newWatchService(), Duration.ofMillis(20), look);
  }

  private static List<Path> seen(FileWatch watch) {
    return assertTimeoutPreemptively(LONG, watch::await);
  }

  @Test
  void fileBehindALinkIsSeenThoughItsFolderSendsNoNotice() throws Exception {
    Path real = Files.writeString(Files.createDirectory(folder.resolve("far")).resolve("x"), "1");
    Path link = Files.createDirectory(folder.resolve("near")).resolve("link");
    Supplier<Boolean> linked =
        () -> {
          try {
            return Files.isSymbolicLink(Files.createSymbolicLink(link, real));
          } catch (IOException | UnsupportedOperationException e) {
            return false;
          }
        };
    assumeTrue(linked.get(), "no links here");
    try (FileWatch watch = watch(Duration.ofMillis(50))) {
      watch.add(link);
      Files.writeString(real, "22");
      assertEquals(List.of(link), seen(watch));
    }
  }

  @Test
  void changeBetweenTakingInAndWaitingIsNotMissed() throws Exception {
    Path file = Files.writeString(folder.resolve("x"), "1");
    try (FileWatch watch = watch(LONG)) {
      watch.add(file);
      Files.writeString(file, "22");
      assertEquals(List.of(file), seen(watch));
      watch.add(file);
      Files.delete(file);
      assertEquals(List.of(file), seen(watch));
      watch.add(file);
      Files.writeString(file, "22");
      assertEquals(List.of(file), seen(watch));
    }
  }

  @Test
  void onlyWatchedFilesCount() throws Exception {
    Path file = Files.writeString(folder.resolve("x"), "1");
    Path other = folder.resolve("other");
    try (FileWatch watch = watch(Duration.ofMillis(50))) {
      watch.add(file);
      Thread writer =
          new Thread(
              () -> {
                try {
                  Files.writeString(other, "1");
                  Thread.sleep(100);
                  Files.writeString(file, "22");
                } catch (IOException | InterruptedException e) {
                  throw new IllegalStateException(e);
                }
              });
      writer.start();
      assertEquals(List.of(file), seen(watch));
      writer.join();
    }
  }

  @Test
  void folderThatGoesAndComesBackIsWatchedAgain() throws Exception {
    Path inner = Files.createDirectory(folder.resolve("inner"));
    Path file = Files.writeString(inner.resolve("x"), "1");
    try (FileWatch watch = watch(Duration.ofMillis(50))) {
      watch.add(file);
      Files.delete(file);
      Files.delete(inner);
      assertEquals(List.of(file), seen(watch));
      watch.add(file);
      Files.createDirectory(inner);
      Files.writeString(file, "1");
      assertEquals(List.of(file), seen(watch));
    }
  }
}
