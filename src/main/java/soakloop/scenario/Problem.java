package soakloop.scenario;

/**
 * One thing wrong with a scenario.
 *
 * @param file the file's name
 * @param line from 1; 0 if it has no place in the file
 * @param column from 1; 0 if it has no place in the file
 * @param key dotted path of the key, empty for the file as a whole
 * @param message what was found and what is allowed
 */
public record Problem(String file, int line, int column, String key, String message) {
  /** Keeps what was found in a file or on a command line from breaking the message's one line. */
  public Problem {
    file = oneLine(file);
    key = oneLine(key);
    message = oneLine(message);
  }

  private static String oneLine(String text) {
    return text.replaceAll("\\p{Cc}", "?");
  }

  @Override
  public String toString() {
    String place = line > 0 ? file + ":" + line + ":" + column : file;
    return place + ": " + (key.isEmpty() ? "" : key + ": ") + message;
  }
}
