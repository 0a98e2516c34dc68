package soakloop.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The list of files that soakloop wrote in a folder, with what each then held: a hidden file of
 * lines {@code SHA-256 of the content, two spaces, name} below a first line that marks it. While
 * results are being replaced a name has two lines, for the old content and the new: then a program
 * that was killed midway leaves nothing that the next one would take for somebody else's.
 *
 * @param hashes for each name, the SHA-256 in hexadecimal of what it may hold
 */
record Manifest(Map<String, Set<String>> hashes) {
  /** Its file name. */
  static final String NAME = ".soakloop";

  private static final String MARK = "# files written by soakloop";
  private static final Pattern LINE = Pattern.compile("([0-9a-f]{64})  ([A-Za-z0-9.-]+)");

  Manifest {
    Map<String, Set<String>> copy = new LinkedHashMap<>();
    hashes.forEach((name, some) -> copy.put(name, Set.copyOf(some)));
    hashes = Map.copyOf(copy);
  }

  /** Returns the manifest of new contents. */
  static Manifest of(Map<String, byte[]> contents) {
    Map<String, Set<String>> hashes = new LinkedHashMap<>();
    contents.forEach((name, bytes) -> hashes.put(name, Set.of(hash(bytes))));
    return new Manifest(hashes);
  }

  /**
   * Returns the same with what an earlier one says of files of another kind.
   *
   * @param before the earlier one
   * @param kind every name that files of this kind can have
   */
  Manifest besides(Manifest before, List<String> kind) {
    Map<String, Set<String>> all = new LinkedHashMap<>(before.hashes);
    all.keySet().removeAll(kind);
    all.putAll(hashes);
    return new Manifest(all);
  }

  /** Returns the manifest of a folder whose files are as either of two say. */
  Manifest or(Manifest other) {
    Map<String, Set<String>> all = new LinkedHashMap<>();
    hashes.forEach((name, some) -> all.put(name, new TreeSet<>(some)));
    other.hashes.forEach(
        (name, some) -> all.computeIfAbsent(name, n -> new TreeSet<>()).addAll(some));
    return new Manifest(all);
  }

  /**
   * Reads a folder's manifest; without one, or with a file of that name that is none, nothing
   * counts as written by soakloop.
   */
  static Manifest read(Path folder) throws IOException {
    Path file = folder.resolve(NAME);
    Map<String, Set<String>> hashes = new LinkedHashMap<>();
    if (isManifest(file)) {
      for (String line : Files.readString(file).lines().toList()) {
        Matcher matcher = LINE.matcher(line);
        if (matcher.matches()) {
          hashes.computeIfAbsent(matcher.group(2), n -> new TreeSet<>()).add(matcher.group(1));
        }
      }
    }
    return new Manifest(hashes);
  }

  /** Returns whether a file is a manifest. */
  static boolean isManifest(Path file) throws IOException {
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      return false;
    }
    byte[] mark = MARK.getBytes(StandardCharsets.UTF_8);
    try (var in = Files.newInputStream(file)) {
      return java.util.Arrays.equals(in.readNBytes(mark.length), mark);
    }
  }

  /** Returns whether a file of the folder is as soakloop left it. */
  boolean isOurs(Path file) throws IOException {
    Set<String> some = hashes.getOrDefault(file.getFileName().toString(), Set.of());
    return !some.isEmpty()
        && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
        && some.contains(hash(Files.readAllBytes(file)));
  }

  /** Returns the file's content. */
  byte[] content() {
    StringBuilder text = new StringBuilder(MARK).append('\n');
    hashes.entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .forEach(
            e ->
                new TreeSet<>(e.getValue())
                    .forEach(
                        hash -> text.append(hash).append("  ").append(e.getKey()).append('\n')));
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static String hash(byte[] content) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
