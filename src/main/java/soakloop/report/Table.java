package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A table in words; columns from {@code firstNumber} on hold numbers.
 *
 * @param head column names
 * @param rows cells, as many in each row
 * @param firstNumber index of the first column of numbers
 * @param lastNumber index of the last column of numbers
 */
record Table(List<String> head, List<List<String>> rows, int firstNumber, int lastNumber) {
  Table {
    head = List.copyOf(head);
    rows = rows.stream().map(List::copyOf).toList();
    for (List<String> row : rows) {
      if (row.size() != head.size()) {
        throw new IllegalArgumentException("row " + row + " does not fit " + head);
      }
    }
  }

  /** Returns the same without one of the columns of numbers. */
  Table without(int column) {
    return new Table(
        left(head, column),
        rows.stream().map(r -> left(r, column)).toList(),
        firstNumber,
        lastNumber - 1);
  }

  private static List<String> left(List<String> row, int column) {
    List<String> left = new ArrayList<>(row);
    left.remove(column);
    return left;
  }

  /** Returns what a template needs of it. */
  Map<String, Object> model() {
    return Map.of("head", head, "rows", rows, "first", firstNumber, "last", lastNumber);
  }

  /** Returns it as lines of text, columns apart by two spaces, numbers to the right. */
  List<String> lines() {
    List<List<String>> all = new ArrayList<>();
    all.add(head);
    all.addAll(rows);
    int[] widths = new int[head.size()];
    for (List<String> row : all) {
      for (int i = 0; i < widths.length; i++) {
        widths[i] = Math.max(widths[i], row.get(i).length());
      }
    }
    return all.stream().map(row -> line(row, widths)).toList();
  }

  private String line(List<String> row, int[] widths) {
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < widths.length; i++) {
      String pad = " ".repeat(widths[i] - row.get(i).length());
      boolean number = i >= firstNumber && i <= lastNumber;
      line.append(i > 0 ? "  " : "").append(number ? pad + row.get(i) : row.get(i) + pad);
    }
    return line.toString().stripTrailing();
  }
}
