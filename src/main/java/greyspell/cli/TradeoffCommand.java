package greyspell.cli;

import greyspell.quantity.Dimension;
import greyspell.quantity.Quantity;
import greyspell.report.TradeoffFiles;
import greyspell.report.TradeoffJson;
import greyspell.report.TradeoffText;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioReader;
import greyspell.study.Tradeoff;
import greyspell.study.TradeoffAsked;
import greyspell.study.Trials;
import greyspell.study.WintersWanted;
import greyspell.weather.ensemble.WinterSource;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Panels against storage. */
@Command(
    name = "tradeoff",
    description = {
      "Panels or storage? Tells what one more string is worth in storage.",
      "Replays the weather for every pair of panels and bank around what stands; tells where the answer flips and what limits cut off."
    },
    footer = {
      "",
      "Example: greyspell tradeoff scenarios/alder-fold.yaml --out out --roof 48 --budget 9000",
      "Example: greyspell tradeoff scenarios/alder-fold.yaml --panels 12..60 --storage 5..60kWh --winters 100"
    },
    mixinStandardHelpOptions = true)
final class TradeoffCommand implements Callable<Integer> {
  private static final int MOST_MODULES = 100_000;

  /** Modules or Wh; more is a slip of the keys. */
  private static final double MOST = 1e9;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(index = "0", paramLabel = "SCENARIO", description = "The scenario file.")
  private Path scenario = Path.of("");

  @Option(
      names = {"-o", "--out"},
      paramLabel = "DIR",
      description = "Write the picture (tradeoff.svg, tradeoff.png) and the table map.csv there.")
  private @Nullable Path out;

  @Option(
      names = "--panels",
      paramLabel = "FROM..TO",
      description = "Modules to show, 12..60. Without it up to three times what stands.")
  private @Nullable String panels;

  @Option(
      names = "--panel-step",
      paramLabel = "STRINGS",
      description = "So many strings from one number of panels to the next; 1 without it.")
  private int panelStep = 1;

  @Option(
      names = "--storage",
      paramLabel = "FROM..TO",
      description =
          "Nominal energy of the banks to show, 5..60kWh. Without it up to three times what stands.")
  private @Nullable String storage;

  @Option(
      names = "--storage-step",
      paramLabel = "ENERGY",
      description = "From one bank to the next, 2.56kWh. Without it parts of a pack.")
  private @Nullable String storageStep;

  @Option(
      names = "--plane",
      paramLabel = "NAME",
      description =
          "Add and take away strings of this plane only; without it the planes keep their proportion.")
  private @Nullable String plane;

  @Option(
      names = "--unmet-hours",
      paramLabel = "HOURS",
      description =
          "Unmet hours of an average year that you bear: the frontier keeps to them. ${DEFAULT-VALUE} without it.")
  private double unmetHours = TradeoffAsked.USUAL_TARGET_HOURS;

  @Option(
      names = "--roof",
      paramLabel = "MODULES",
      description = "Room for modules, all planes together.")
  private @Nullable Integer roof;

  @Option(
      names = "--budget",
      paramLabel = "MONEY",
      description =
          "Most to spend beyond what stands, in the scenario's currency; needs its prices.")
  private @Nullable Double budget;

  @Option(
      names = "--json",
      description = "Print everything for other programs instead of the text.")
  private boolean json;

  @Mixin private WintersOption winters = new WintersOption();

  @Mixin private LibraryOption library = new LibraryOption();

  @Override
  public Integer call() throws IOException {
    PrintWriter screen = spec.commandLine().getOut();
    TradeoffAsked asked = asked();
    Tradeoff tradeoff;
    List<Path> files = List.of();
    try (var progress = Progress.onTerminal()) {
      progress.step("reading the scenario", 0.0);
      Scenario home = ScenarioReader.read(scenario, library.folder());
      checkPlane(home);
      WintersWanted wanted = winters.find(home);
      Trials trials = trials(home, wanted, progress);
      tradeoff = Tradeoff.of(trials, asked, progress::step);
      if (out != null) {
        progress.step("drawing", 0.9);
        files = TradeoffFiles.write(tradeoff, out);
      }
    }
    if (out != null && files.stream().noneMatch(f -> f.toString().endsWith(".png"))) {
      spec.commandLine()
          .getErr()
          .println("No PNG picture: Java finds no font on this machine. The SVG picture is whole.");
    }
    screen.print(json ? TradeoffJson.text(tradeoff) : TradeoffText.of(tradeoff, files));
    screen.flush();
    return 0;
  }

  private static Trials trials(Scenario home, @Nullable WintersWanted wanted, Progress progress) {
    if (wanted == null) {
      return Trials.of(home, progress::step);
    }
    WinterSource source = wanted.source(home);
    return Trials.of(home, source, source.years(), progress::step);
  }

  private TradeoffAsked asked() {
    var reader = new OptionReader();
    double[] modules = range(reader, "--panels", panels, Dimension.NUMBER);
    double[] wh = range(reader, "--storage", storage, Dimension.ENERGY);
    Double step = reader.positive("--storage-step", storageStep, Dimension.ENERGY);
    least(reader, "--panel-step", panelStep, 1);
    least(reader, "--unmet-hours", unmetHours, 0);
    if (roof != null) {
      least(reader, "--roof", roof, 1);
    }
    if (budget != null) {
      least(reader, "--budget", budget, 0);
    }
    reader.throwIfAny();
    return new TradeoffAsked(
        plane,
        modules == null ? null : Integer.valueOf((int) Math.ceil(modules[0])),
        modules == null ? null : Integer.valueOf((int) Math.min(MOST_MODULES, modules[1])),
        panelStep,
        wh == null ? null : Double.valueOf(wh[0]),
        wh == null ? null : Double.valueOf(wh[1]),
        step,
        roof,
        budget,
        unmetHours);
  }

  private static void least(OptionReader reader, String option, double value, int least) {
    if (!(value >= least)) {
      reader.fault(
          option, "found " + value, "must be " + least + " or more", "Leave it out for the usual.");
    }
  }

  /** Two values with dots between; a unit behind the second holds for the first as well. */
  private static double @Nullable [] range(
      OptionReader reader, String option, @Nullable String text, Dimension dimension) {
    if (text == null) {
      return null;
    }
    int dots = text.indexOf("..");
    if (dots < 0) {
      reader.fault(
          option,
          "found \"" + text + "\"",
          "must be two values with dots between, as 12..60 or 5..60kWh",
          "Write FROM..TO.");
      return null;
    }
    String from = text.substring(0, dots).strip(), to = text.substring(dots + 2).strip();
    String unit = to.replaceFirst("^[0-9.,]+\\s*", "");
    double low, high;
    try {
      // the second first: where its unit is wrong, that is the one mistake
      high = Quantity.parse(to, dimension).inside();
      String full = from.matches("[0-9.,]+") ? (from + " " + unit).strip() : from;
      low = Quantity.parse(full, dimension).inside();
    } catch (Quantity.NotUnderstood e) {
      reader.fault(option, "found \"" + text + "\"", e.expected(), e.mend());
      return null;
    }
    if (!(low > 0.0 && high > 0.0 && high <= MOST)) {
      reader.fault(option, "found \"" + text + "\"", "must be above 0", "Is the unit right?");
      return null;
    }
    if (!(low < high)) {
      reader.fault(option, "found \"" + text + "\"", "must rise", "Are the two swapped?");
    }
    return new double[] {low, high};
  }

  private void checkPlane(Scenario home) {
    if (plane == null || home.arrays().stream().anyMatch(a -> a.name().equals(plane))) {
      return;
    }
    var reader = new OptionReader();
    reader.fault(
        "--plane",
        "found \"" + plane + "\"",
        "must be the name of a plane: "
            + String.join(", ", home.arrays().stream().map(a -> a.name()).toList()),
        "Write one of these, in quotation marks if it holds a blank.");
    reader.throwIfAny();
  }
}
