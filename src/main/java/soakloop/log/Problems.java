package soakloop.log;

import java.util.ArrayList;
import java.util.List;

/** Collects what is wrong with one file, so that all of it is said at once. */
final class Problems {
  /** Problems said in full; the others are only counted. */
  static final int SHOWN = 20;

  private final String file;
  private final List<String> shown = new ArrayList<>();
  private int hidden;

  Problems(String file) {
    this.file = file;
  }

  /** Adds a problem of the file as a whole. */
  void add(String what) {
    if (shown.size() < SHOWN) {
      shown.add(line(what));
    } else {
      hidden++;
    }
  }

  /** Adds a problem of a row, counted from 1 as an editor shows it. */
  void addRow(long row, String what) {
    add("row " + row + ": " + what);
  }

  /** Adds a problem of a column. */
  void addColumn(String header, String what) {
    add("column `" + header + "`: " + what);
  }

  /** Adds a problem of a cell. */
  void addCell(long row, String header, String what) {
    add("row " + row + ", column `" + header + "`: " + what);
  }

  /** Returns a problem on one line, whatever the file's names and cells hold. */
  private String line(String what) {
    return (file + ": " + what).replaceAll("\\p{Cc}", "?");
  }

  /** Ends the reading with one problem. */
  LogException only(String what) {
    return new LogException(List.of(line(what)));
  }

  /** Ends the reading if there is any problem. */
  void check() throws LogException {
    if (shown.isEmpty()) {
      return;
    }
    List<String> all = new ArrayList<>(shown);
    if (hidden > 0) {
      all.add(file + ": and " + hidden + " more");
    }
    throw new LogException(all);
  }
}
