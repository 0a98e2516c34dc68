package soakloop.app;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import soakloop.scenario.Scenario;
import soakloop.simulate.Simulation;

/** {@code check}: read and explain, run nothing. */
@Command(
    name = "check",
    description = "Reads a scenario and says what it means and what is assumed; runs nothing.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class CheckCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();
  @Mixin private ScenarioArguments arguments = new ScenarioArguments();

  @Override
  public Integer call() throws Exception {
    Scenario scenario = arguments.read();
    Simulation.checkStart(scenario.setup());
    String text = Explanation.of(scenario);
    PrintWriter out = spec.commandLine().getOut();
    out.print(text);
    out.flush();
    return ExitCode.DONE.code();
  }
}
