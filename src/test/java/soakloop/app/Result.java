package soakloop.app;

import java.io.PrintWriter;
import java.io.StringWriter;
import picocli.CommandLine;

/**
 * What a command line gave.
 *
 * @param code exit code
 * @param out standard output
 * @param err standard error
 */
record Result(int code, String out, String err) {
  /** Calls the program in this process. */
  static Result call(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CommandLine line = Main.commandLine();
    line.setOut(new PrintWriter(out, true));
    line.setErr(new PrintWriter(err, true));
    int code = line.execute(args);
    return new Result(code, out.toString(), err.toString());
  }
}
