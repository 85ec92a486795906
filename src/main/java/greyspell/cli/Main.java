package greyspell.cli;

import greyspell.quantity.BadInput;
import greyspell.quantity.Fault;
import greyspell.quantity.Nearest;
import greyspell.report.FaultText;
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
    versionProvider = Main.Version.class)
public final class Main implements Runnable {
  private static final List<String> COMMANDS =
      List.of(
          "new",
          "check",
          "strings",
          "load",
          "weather",
          "run",
          "explain",
          "today",
          "rules",
          "size",
          "tradeoff",
          "ladder",
          "sweep",
          "effects",
          "compare");

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
    CommandLine line = commandLine(args);
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

  /**
   * Only the command that is asked for is made, which saves a third of the start; help and mistyped
   * names see all.
   */
  static CommandLine commandLine(String... args) {
    var line = new CommandLine(new Main());
    String asked = args.length > 0 && COMMANDS.contains(args[0]) ? args[0] : null;
    for (String name : COMMANDS) {
      if (asked == null || asked.equals(name)) {
        line.addSubcommand(name, command(name));
      }
    }
    if (asked == null) {
      line.addSubcommand(new HelpCommand());
    }
    PlainNumbers.in(line);
    line.setOut(new PrintWriter(System.out, true, StandardCharsets.UTF_8));
    line.setErr(new PrintWriter(System.err, true, StandardCharsets.UTF_8));
    line.setUsageHelpWidth(100);
    line.setParameterExceptionHandler(Main::explainArguments);
    line.setExecutionExceptionHandler((problem, command, parsed) -> explain(problem, command));
    return line;
  }

  private static Object command(String name) {
    return switch (name) {
      case "run" -> new RunCommand();
      case "new" -> new NewCommand();
      case "check" -> new CheckCommand();
      case "strings" -> new StringsCommand();
      case "load" -> new LoadCommand();
      case "size" -> new SizeCommand();
      case "tradeoff" -> new TradeoffCommand();
      case "effects" -> new EffectsCommand();
      case "sweep" -> new SweepCommand();
      case "ladder" -> new LadderCommand();
      case "explain" -> new ExplainCommand();
      case "today" -> new TodayCommand();
      case "rules" -> new RulesCommand();
      case "weather" -> new WeatherCommand();
      case "compare" -> new CompareCommand();
      default -> throw new IllegalArgumentException(name);
    };
  }

  @Override
  public void run() {
    spec.commandLine().usage(spec.commandLine().getOut());
  }

  private static int explainArguments(ParameterException problem, String[] args) {
    CommandLine command = problem.getCommandLine();
    command.getErr().println(problem.getMessage());
    String near = args.length > 0 ? Nearest.of(args[0], COMMANDS) : null;
    if (near != null && !near.equals(args[0])) {
      command.getErr().println("Did you mean: greyspell " + near + "?");
    }
    command.getErr().println("Try: " + command.getCommandSpec().qualifiedName() + " --help");
    return BAD_INPUT;
  }

  private static int explain(Exception problem, CommandLine command) {
    PrintWriter err = command.getErr();
    if (problem instanceof BadInput bad) {
      List<Fault> faults = bad.faults();
      faults.forEach(fault -> err.println(FaultText.of(fault)));
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
