package soakloop.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;

/** Files that go into a result folder together: a page, its charts as pictures, and texts. */
interface ResultFiles {
  /** Returns the name of the page. */
  String pageName();

  /** Returns the charts, in the order they are read. */
  List<Chart> charts();

  /** Returns the writers of the other texts by file name, in the order they are listed. */
  Map<String, Callable<String>> texts();

  /**
   * Makes the page.
   *
   * @param drawn the charts, drawn for the page
   * @throws IOException if the template cannot be read or filled
   */
  String page(List<DrawnChart> drawn) throws IOException;

  /**
   * Makes further pages that show some of the charts, by file name; none if nothing else is said.
   *
   * @param drawn the charts, drawn for the page
   * @throws IOException if a template cannot be read or filled
   */
  default Map<String, String> morePages(List<DrawnChart> drawn) throws IOException {
    return Map.of();
  }

  /** Returns the names of the further pages, in the order they are listed. */
  default List<String> morePageNames() {
    return List.of();
  }

  /** Returns every name that files of this kind can have. */
  List<String> everyName();

  /** Returns the names of these files, in the order they are listed. */
  default List<String> names() {
    List<String> names = new ArrayList<>();
    names.add(pageName());
    names.addAll(morePageNames());
    names.addAll(texts().keySet());
    charts().forEach(chart -> names.add(picture(chart.name())));
    return names;
  }

  /** Returns the name of a chart's picture. */
  static String picture(String chart) {
    return chart + ".png";
  }
}
