package greyspell.cli;

import greyspell.quantity.BadInput;
import greyspell.quantity.Fault;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/**
 * Start of the program: hands the arguments to a command and turns faults into messages and exit
 * codes.
 */
@Command(
    name = "greyspell",
    description = {
      "Tells whether the panels and the bank of an off-grid home carry the house through the grey weeks,",
      "hour by hour, and when and why the lights go out."
    },
    footer = {
      "",
      "Example: greyspell run scenarios/alder-fold.yaml --out out",
      "",
      "Exit codes: 0 done; 1 done, and a finding that you asked to be warned of; 2 bad input; 3 a fault of the program."
    },
    mixinStandardHelpOptions = true,
    versionProvider = Main.Version.class,
    subcommands = {RunCommand.class, NewCommand.class, WeatherCommand.class, HelpCommand.class})
public final class Main implements Runnable {
  static final int FOUND = 1;
  static final int BAD_INPUT = 2;
  static final int OWN_FAULT = 3;

  @Spec private CommandSpec spec = CommandSpec.create();

  Main() {}

  public static void main(String[] args) {
    System.exit(run(args));
  }

  /**
   * Also what is no exception ends in words: a machine without memory, a class that cannot be made.
   */
  private static int run(String[] args) {
    CommandLine line = commandLine();
    try {
      return line.execute(args);
    } catch (OutOfMemoryError e) {
      line.getErr()
          .println(
              "Not enough memory for this; give Java more (-Xmx2g) or take fewer years of weather.");
      return OWN_FAULT;
    } catch (LinkageError | StackOverflowError | AssertionError e) {
      return explain(new IllegalStateException(e), line);
    }
  }

  static CommandLine commandLine() {
    var line = new CommandLine(new Main());
    line.setOut(new PrintWriter(System.out, true, StandardCharsets.UTF_8));
    line.setErr(new PrintWriter(System.err, true, StandardCharsets.UTF_8));
    line.setUsageHelpWidth(100);
    line.setParameterExceptionHandler(Main::explainArguments);
    line.setExecutionExceptionHandler((problem, command, parsed) -> explain(problem, command));
    return line;
  }

  @Override
  public void run() {
    spec.commandLine().usage(spec.commandLine().getOut());
  }

  private static int explainArguments(ParameterException problem, String[] args) {
    CommandLine command = problem.getCommandLine();
    command.getErr().println(problem.getMessage());
    CommandLine.UnmatchedArgumentException.printSuggestions(problem, command.getErr());
    command.getErr().println("Try: " + command.getCommandSpec().qualifiedName() + " --help");
    return BAD_INPUT;
  }

  private static int explain(Exception problem, CommandLine command) {
    PrintWriter err = command.getErr();
    if (problem instanceof BadInput bad) {
      List<Fault> faults = bad.faults();
      faults.forEach(fault -> err.println(fault.text()));
      err.println(
          faults.size() == 1
              ? "1 fault; nothing was written."
              : faults.size() + " faults; nothing was written.");
      return BAD_INPUT;
    }
    err.println("greyspell has a fault of its own: " + problem);
    err.println(
        "Please report it with the command and the files. GREYSPELL_TRACE=1 shows where it happened.");
    if (System.getenv("GREYSPELL_TRACE") != null) {
      problem.printStackTrace(err);
    }
    return OWN_FAULT;
  }

  /** The version that the build wrote into the jar. */
  static final class Version implements CommandLine.IVersionProvider {
    @Override
    public String[] getVersion() {
      String version = Main.class.getPackage().getImplementationVersion();
      return new String[] {"greyspell " + (version == null ? "(not from a jar)" : version)};
    }
  }
}
