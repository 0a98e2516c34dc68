package soakloop.log;

import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Files that are not text, known by their first bytes, and what to export instead. */
final class FileKind {
  private static final String PACKED = "is packed (%s); unpack it and use the CSV file in it";
  private static final String PICTURE = "is a picture (%s); export the log's numbers as CSV";

  /** First bytes of open formats, as their specifications give them. */
  private static final List<Magic> KNOWN =
      List.of(
          magic("1f8b", PACKED.formatted("gzip")),
          magic("425a68", PACKED.formatted("bzip2")),
          magic("fd377a585a00", PACKED.formatted("xz")),
          magic("28b52ffd", PACKED.formatted("zstd")),
          magic("377abcaf271c", PACKED.formatted("7z")),
          magic("526172211a07", PACKED.formatted("rar")),
          magic("d0cf11e0a1b11ae1", "is an old spreadsheet (xls); save its sheet as CSV"),
          magic("255044462d", "is a PDF; export the log's numbers as CSV"),
          magic("89504e470d0a1a0a", PICTURE.formatted("PNG")),
          magic("ffd8ff", PICTURE.formatted("JPEG")),
          magic("47494638", PICTURE.formatted("GIF")),
          magic("4d44462020202020", "is a binary measurement file (MDF); export it as CSV"),
          magic("894844460d0a1a0a", "is a binary data file (HDF5); export it as CSV"),
          magic("53514c69746520666f726d6174203300", "is a database (SQLite); export it as CSV"));

  private static final String ZIP = "PK\u0003\u0004";

  private record Magic(String bytes, String answer) {}

  private FileKind() {}

  /**
   * Says what a file is if it is no text that could be a log.
   *
   * @param head its first bytes
   * @return as the end of a sentence
   */
  static Optional<String> notALog(byte[] head) {
    String text = new String(head, StandardCharsets.ISO_8859_1);
    Optional<String> known =
        KNOWN.stream().filter(m -> text.startsWith(m.bytes())).map(Magic::answer).findFirst();
    if (known.isPresent()) {
      return known;
    }
    if (text.startsWith(ZIP)) {
      boolean sheet = text.contains("[Content_Types].xml") || text.contains("opendocument");
      return Optional.of(
          sheet ? "is a spreadsheet; save its sheet as CSV" : PACKED.formatted("zip"));
    }
    String start = text.replace("\u00ef\u00bb\u00bf", "").stripLeading().toLowerCase(Locale.ROOT);
    if (start.startsWith("<!doctype") || start.startsWith("<html")) {
      return Optional.of("is a web page (HTML); export the log as CSV");
    }
    if (start.startsWith("<?xml")) {
      return Optional.of("is XML; export the log as CSV");
    }
    if (start.startsWith("{\"") || start.startsWith("[{") || start.startsWith("{\n")) {
      return Optional.of("is JSON; export the log as CSV");
    }
    return Optional.empty();
  }

  private static Magic magic(String hex, String answer) {
    return new Magic(new String(HexFormat.of().parseHex(hex), StandardCharsets.ISO_8859_1), answer);
  }
}
