package soakloop.report;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;

/** A program that replaces results without a pause, to be killed. */
final class RestlessWriter {
  static final int TEXTS = 12;

  private RestlessWriter() {}

  /**
   * Files that all say which generation they are of, from their first line to their last.
   *
   * @param generation odd ones have one text fewer
   */
  record Generation(int generation) implements ResultFiles {
    private static final int LINES = 2000;

    private String content() {
      return ("generation " + generation + "\n").repeat(LINES);
    }

    /** Returns the generation of a whole file. */
    static int of(String content) {
      int generation = Integer.parseInt(content.substring(11, content.indexOf('\n')));
      if (!content.equals(new Generation(generation).content())) {
        throw new AssertionError("a file is half written: " + content.length() + " characters");
      }
      return generation;
    }

    @Override
    public String pageName() {
      return "page.html";
    }

    @Override
    public List<Chart> charts() {
      return List.of();
    }

    @Override
    public Map<String, Callable<String>> texts() {
      Map<String, Callable<String>> texts = new LinkedHashMap<>();
      for (int i = generation % 2; i < TEXTS; i++) {
        texts.put("text" + i + ".csv", this::content);
      }
      return texts;
    }

    @Override
    public String page(List<DrawnChart> drawn) throws IOException {
      return content();
    }

    @Override
    public List<String> everyName() {
      List<String> names = new ArrayList<>(List.of(pageName()));
      for (int i = 0; i < TEXTS; i++) {
        names.add("text" + i + ".csv");
      }
      return names;
    }
  }

  /** Writes for ever into the folder that it is given. */
  public static void main(String[] args) throws Exception {
    for (int generation = 0; ; generation++) {
      ResultFolder.at(Path.of(args[0]), false).write(new Generation(generation));
    }
  }
}
