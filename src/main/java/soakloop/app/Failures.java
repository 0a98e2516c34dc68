package soakloop.app;

import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;
import soakloop.fit.FitException;
import soakloop.log.LogException;
import soakloop.report.ResultException;
import soakloop.scenario.ScenarioException;
import soakloop.simulate.SimulationException;
import soakloop.study.StudyException;

/** Turns what went wrong into a message and an exit code. */
final class Failures implements IExecutionExceptionHandler {
  @Override
  public int handleExecutionException(Exception failure, CommandLine line, ParseResult parsed) {
    PrintWriter err = line.getErr();
    if (failure instanceof ScenarioException scenario) {
      scenario.problems().forEach(err::println);
      int count = scenario.problems().size();
      err.println(count == 1 ? "1 problem; nothing was run" : count + " problems; nothing was run");
      return ExitCode.INPUT.code();
    }
    if (failure instanceof LogException log) {
      log.problems().forEach(err::println);
      return ExitCode.INPUT.code();
    }
    if (failure instanceof SimulationException run) {
      err.println(file(parsed) + run.getMessage());
      return run.isInputWrong() ? ExitCode.INPUT.code() : ExitCode.UNFINISHED.code();
    }
    if (failure instanceof StudyException || failure instanceof FitException) {
      err.println(failure.getMessage());
      return ExitCode.INPUT.code();
    }
    if (failure instanceof ResultException result) {
      err.println(result.getMessage());
      return result.isInputWrong() ? ExitCode.INPUT.code() : ExitCode.UNFINISHED.code();
    }
    err.println("soakloop " + Version.number() + " has a fault; please report it with this text:");
    failure.printStackTrace(err);
    return ExitCode.FAULT.code();
  }

  /** Returns the scenario's name as it was given, to begin a message with. */
  private static String file(ParseResult parsed) {
    ParseResult command = parsed.hasSubcommand() ? parsed.subcommand() : parsed;
    return command.hasMatchedPositional(0)
        ? command.matchedPositional(0).stringValues().get(0) + ": "
        : "";
  }
}
