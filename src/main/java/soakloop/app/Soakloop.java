package soakloop.app;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The top command. */
@Command(
    name = "soakloop",
    description = "Simulates the charge-air coolant loop of a supercharged car.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    subcommands = {
      LogCommand.class,
      RunCommand.class,
      CheckCommand.class,
      VaryCommand.class,
      RankCommand.class,
      FitCommand.class,
      VersusCommand.class,
      WaitCommand.class,
      DynoDayCommand.class
    },
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      " 0:done",
      " 1:a fault of this program",
      " 2:the input is wrong; the message says where",
      " 3:the run could not finish"
    })
final class Soakloop implements Runnable {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(), "say what to do: " + String.join(", ", names(spec.commandLine())));
  }

  private static java.util.Set<String> names(CommandLine line) {
    return line.getSubcommands().keySet();
  }
}
