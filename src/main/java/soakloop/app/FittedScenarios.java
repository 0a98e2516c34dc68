package soakloop.app;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import soakloop.fit.FitResult;
import soakloop.fit.FoundValues;
import soakloop.scenario.FittedText;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioException;
import soakloop.scenario.ScenarioReader;

/** Makes the texts of fitted scenarios. */
final class FittedScenarios {
  private FittedScenarios() {}

  /**
   * Where a case comes from.
   *
   * @param scenario its file
   * @param log its log's file
   */
  record CaseFiles(Path scenario, Path log) {}

  /**
   * Makes a text for each case.
   *
   * @param result what the fit gave
   * @param files of each case, in order
   * @param folder in which the texts will lie
   * @return texts by file name
   * @throws IOException if a log can no longer be read
   * @throws ScenarioException if a scenario can no longer be read or what was found cannot stand in
   *     it
   */
  static Map<String, String> of(FitResult result, List<CaseFiles> files, Path folder)
      throws IOException, ScenarioException {
    Map<String, String> texts = new LinkedHashMap<>();
    for (int i = 0; i < files.size(); i++) {
      CaseFiles from = files.get(i);
      FoundValues.Origin origin =
          new FoundValues.Origin(
              reached(from.log(), folder),
              sha256(from.log()),
              LocalDate.now(ZoneId.systemDefault()).toString(),
              Version.number());
      byte[] content = ScenarioReader.content(from.scenario());
      String text = new String(content, StandardCharsets.UTF_8).replaceFirst("^\ufeff", "");
      Scenario scenario = result.plan().cases().get(i).scenario();
      texts.put(
          name(i, files.size()), FittedText.of(text, scenario, FoundValues.of(result, i, origin)));
    }
    return texts;
  }

  /** Returns the name of a case's file. */
  static String name(int index, int of) {
    return of == 1 ? "fitted.yaml" : "fitted-" + (index + 1) + ".yaml";
  }

  /** Returns how a file is reached from a folder, with slashes. */
  private static String reached(Path file, Path folder) {
    Path to = file.toAbsolutePath().normalize();
    Path from = folder.toAbsolutePath().normalize();
    boolean oneRoot = to.getRoot() != null && to.getRoot().equals(from.getRoot());
    return (oneRoot ? from.relativize(to) : to).toString().replace('\\', '/');
  }

  private static String sha256(Path file) throws IOException {
    try {
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      try (InputStream in = new DigestInputStream(Files.newInputStream(file), sha)) {
        in.transferTo(java.io.OutputStream.nullOutputStream());
      }
      return HexFormat.of().formatHex(sha.digest());
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
