package soakloop.log;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A file's values before their meaning is settled.
 *
 * @param headers its columns
 * @param columns their values in the file's units; nothing where a column is not read
 * @param time s, as the file has it
 * @param zero the cell that time zero was put at, empty if the file's own zero stays
 * @param lines the file's line of each row
 * @param notes its comment lines
 * @param remarks what was found about rows and cells
 */
@SuppressWarnings("ArrayRecordComponent") // compared by nobody
record RawTable(
    List<Header> headers,
    @Nullable Series[] columns,
    Series time,
    String zero,
    Series lines,
    List<String> notes,
    List<Remark> remarks) {}
