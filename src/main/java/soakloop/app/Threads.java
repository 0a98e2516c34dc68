package soakloop.app;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** How many runs a command does at a time. */
final class Threads {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec = CommandSpec.create();

  @Option(
      names = "--threads",
      paramLabel = "N",
      description = "Runs at a time; as many as there are processors if left out.")
  private int count = Runtime.getRuntime().availableProcessors();

  /** Makes sure that it is one or more; else the command line is wrong. */
  void check() {
    if (count < 1) {
      throw new ParameterException(
          spec.commandLine(), "--threads must be one or more, not " + count);
    }
  }

  int count() {
    return count;
  }
}
