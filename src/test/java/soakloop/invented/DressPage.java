package soakloop.invented;

import java.nio.charset.StandardCharsets;
import java.util.List;

/** The text of a dressed log while it is written. */
final class DressPage {
  private final LogDress dress;
  private final StringBuilder text = new StringBuilder();

  DressPage(LogDress dress) {
    this.dress = dress;
  }

  void text(String more) {
    text.append(more);
  }

  /** Writes a row, with quotes where they are needed. */
  void line(List<String> cells) {
    String by = Character.toString(dress.separator());
    for (int i = 0; i < cells.size(); i++) {
      String cell = cells.get(i);
      boolean quoted = cell.contains(by) || dress.extra() == LogDress.Extra.QUOTED;
      text.append(i > 0 ? by : "").append(quoted ? "\"" + cell + "\"" : cell);
    }
    text.append('\n');
  }

  /** The file. */
  byte[] bytes() {
    String all = text.toString().replace("\n", dress.lineEnd());
    if (dress.encoding() == LogDress.Encoding.TWICE) {
      all = new String(all.getBytes(StandardCharsets.UTF_8), StandardCharsets.ISO_8859_1);
    }
    return (dress.encoding().mark + all).getBytes(dress.encoding().charset);
  }
}
