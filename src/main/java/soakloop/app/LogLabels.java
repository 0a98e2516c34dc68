package soakloop.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Short names for files, all different. */
final class LogLabels {
  private LogLabels() {}

  /** Returns a name for each file: its own, with its folder's or a number where two are alike. */
  static List<String> of(List<Path> files) {
    List<String> names = files.stream().map(LogLabels::name).toList();
    if (names.stream().distinct().count() == names.size()) {
      return names;
    }
    List<String> longer = files.stream().map(LogLabels::withFolder).toList();
    if (longer.stream().distinct().count() == longer.size()) {
      return longer;
    }
    List<String> numbered = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      numbered.add(names.get(i) + " (" + (i + 1) + ")");
    }
    return numbered;
  }

  private static String name(Path file) {
    return file.getFileName() == null ? file.toString() : file.getFileName().toString();
  }

  private static String withFolder(Path file) {
    Path folder = file.toAbsolutePath().normalize().getParent();
    return folder == null || folder.getFileName() == null
        ? name(file)
        : folder.getFileName() + "/" + name(file);
  }

  /** Returns a file's name without its ending, in letters that any file system takes. */
  static String stem(Path file) {
    String plain = name(file).replaceFirst("\\.[^.]*$", "").replaceAll("[^A-Za-z0-9-]+", "-");
    String trimmed = plain.replaceAll("^-+|-+$", "");
    return trimmed.isEmpty() ? "log" : trimmed;
  }
}
