package greyspell.cli;

import greyspell.array.ArraySpec;
import greyspell.array.ControllerSpec;
import greyspell.array.ModuleSpec;
import greyspell.chart.CurvePictures.Condition;
import greyspell.chart.StringPictures;
import greyspell.electrical.StringJudgement;
import greyspell.electrical.Wanted;
import greyspell.quantity.Dimension;
import greyspell.quantity.Nearest;
import greyspell.report.PlanesText;
import greyspell.report.StringFiles;
import greyspell.report.StringsText;
import greyspell.scenario.EquipmentReader;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioReader;
import greyspell.study.PlanesCompared;
import greyspell.study.StringStudy;
import greyspell.study.StringStudy.Asked;
import greyspell.study.StringStudy.Stated;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Which strings a controller accepts. */
@Command(
    name = "strings",
    description = {
      "Judges every arrangement of equal strings, cold and hot, and names the best.",
      "Of a scenario's planes also what each brings in an average year of its weather.",
      "For the planes of a scenario, or for a module and a controller of the equipment library."
    },
    footer = {
      "",
      "Example: greyspell strings scenarios/alder-fold.yaml --array \"barn roof\" --pictures out/strings",
      "Example: greyspell strings --module \"Orrin Bay OB-410H\" --controller \"Sable Ridge SR-D100\""
          + " --power 5kW --bank-voltage 51.2V --record-low=-16C --record-high 34C",
      "",
      "What cannot be judged is not passed: without the record temperatures, the controller's highest"
          + " voltage and current and the module's highest system voltage no arrangement is allowed.",
      "",
      "Exit codes: 0 some arrangement of every plane is allowed; 1 none is, or it cannot be judged; 2 bad input."
    },
    mixinStandardHelpOptions = true)
final class StringsCommand implements Callable<Integer> {
  private static final int MOST_CONDITIONS = 5;
  private static final int BOX_OF_HOURS = 24;
  private static final Pattern CONDITION = Pattern.compile("(.+/\\s*m(?:2|²|\\^2))[\\s,]+(.+)");

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "SCENARIO",
      description = "The scenario file; without it name --module, --controller, --bank-voltage.")
  private @Nullable Path scenario;

  @Option(
      names = "--modules",
      paramLabel = "N",
      description = "How many modules to arrange; without it as many as the plane has.")
  private @Nullable Integer modules;

  @Option(names = "--power", paramLabel = "W", description = "Or how much power: 6kW.")
  private @Nullable String power;

  @Option(
      names = "--array",
      paramLabel = "NAME",
      description = "Only this plane of the scenario; without it each.")
  private @Nullable String array;

  @Option(
      names = "--module",
      paramLabel = "NAME",
      description = "A module of the library, instead of the scenario's.")
  private @Nullable String module;

  @Option(
      names = "--controller",
      paramLabel = "NAME",
      description = "A controller of the library, instead of the scenario's.")
  private @Nullable String controller;

  @Option(
      names = "--bank-voltage",
      paramLabel = "V",
      description = "Nominal voltage of the bank: 51.2V.")
  private @Nullable String bankVoltage;

  @Option(
      names = "--charging-voltage",
      paramLabel = "V",
      description =
          "Highest voltage to which the bank is charged; without it the scenario's, or 1.2 times the nominal one.")
  private @Nullable String chargingVoltage;

  @Option(
      names = "--record-low",
      paramLabel = "T",
      description = "Coldest air ever noted at the site: --record-low=-16C or 3F. Never guessed.")
  private @Nullable String recordLow;

  @Option(
      names = "--record-high",
      paramLabel = "T",
      description = "Hottest air ever noted at the site: 34C. Never guessed.")
  private @Nullable String recordHigh;

  @Option(
      names = "--no-dwelling-limit",
      description = "The building is no dwelling, so its voltage limit does not hold.")
  private boolean noDwellingLimit;

  @Option(
      names = "--pictures",
      paramLabel = "DIR",
      description =
          "Also draw the arrangements, the module's curves, a shaded string and, of two planes with the same module,"
              + " the two joined.")
  private @Nullable Path pictures;

  @Option(
      names = "--at",
      paramLabel = "\"LIGHT TEMPERATURE\"",
      description =
          "Light and cell temperature of a curve, up to five times: --at \"1000 W/m2 25 C\".")
  private List<String> at = new ArrayList<>();

  @Option(
      names = "--hour",
      paramLabel = "H",
      defaultValue = "9",
      description = "Morning hour in which two planes are compared (9 if not said).")
  private int hour;

  @Mixin private LibraryOption library = new LibraryOption();

  private final OptionReader options = new OptionReader();

  @Override
  public Integer call() {
    PrintWriter screen = spec.commandLine().getOut();
    List<Condition> conditions = conditions();
    Path file = scenario;
    Scenario home = file == null ? null : ScenarioReader.read(file, library.folder());
    List<ArraySpec> planes = home == null ? List.of() : chosen(home);
    StringStudy study = home == null ? alone() : of(home, planes);
    screen.print(StringsText.notes(study.notes()));
    var drawn = new ArrayList<StringPictures.Named>();
    for (int k = 0; k < study.judgements().size(); k++) {
      StringJudgement judged = study.judgements().get(k);
      ArraySpec plane = home == null ? null : planes.get(k);
      if (k > 0) {
        screen.println();
      }
      if (home != null && plane != null && home.arrays().size() > 1) {
        screen.print(StringsText.plane(plane.name(), home.arrays().size()));
      }
      screen.print(StringsText.of(judged, study.energy(k)));
      if (pictures != null) {
        drawn.addAll(StringPictures.of(judged, conditions, plane, k == 0 ? "" : "-" + (k + 1)));
      }
    }
    Path folder = pictures;
    if (folder != null) {
      PlanesCompared compared = study.compared(hour);
      if (compared != null) {
        screen.println();
        screen.print(PlanesText.of(compared));
        drawn.add(StringPictures.planes(compared));
      }
      screen.println();
      for (Path written : StringFiles.write(drawn, folder)) {
        screen.println("Wrote " + written);
      }
    }
    screen.flush();
    return study.isSomethingAllowedOfEach() ? 0 : Main.FOUND;
  }

  private StringStudy of(Scenario home, List<ArraySpec> planes) {
    boolean isSized = modules != null || power != null;
    if (isSized && planes.size() > 1) {
      options.fault(
          "--array",
          "not stated",
          "must name the plane that --modules or --power is for: " + names(home),
          "Write for instance --array \"" + planes.get(0).name() + "\".");
    }
    ControllerSpec on =
        controller == null
            ? home.controller()
            : EquipmentReader.controller(library.folder(), controller, "--controller");
    ModuleSpec instead =
        module == null ? null : EquipmentReader.module(library.folder(), module, "--module");
    Stated stated = stated(home.site().recordLowC(), home.site().recordHighC());
    var asked = new ArrayList<Asked>();
    for (ArraySpec plane : planes) {
      ModuleSpec of = instead == null ? plane.module() : instead;
      asked.add(new Asked(plane, of, wanted(plane.modules(), of)));
    }
    options.throwIfAny();
    return StringStudy.of(home, on, asked, stated);
  }

  private StringStudy alone() {
    String moduleName = module;
    String controllerName = controller;
    if (moduleName == null || controllerName == null || bankVoltage == null) {
      options.fault(
          "strings",
          "no SCENARIO, and not all of --module, --controller, --bank-voltage",
          "must be a scenario file, or these three",
          "See: greyspell strings --help");
    }
    if (modules == null && power == null) {
      options.fault(
          "--modules",
          "not stated, and no --power either",
          "must say how many modules, or how much power",
          "Write for instance --modules 12 or --power 5kW.");
    }
    if (array != null) {
      options.fault(
          "--array", "without a scenario", "names a plane of a scenario", "Leave it out.");
    }
    options.throwIfAny();
    ModuleSpec of =
        EquipmentReader.module(library.folder(), String.valueOf(moduleName), "--module");
    ControllerSpec on =
        EquipmentReader.controller(
            library.folder(), String.valueOf(controllerName), "--controller");
    Stated stated = stated(null, null);
    Wanted wanted = wanted(1, of);
    options.throwIfAny();
    double bankV = Objects.requireNonNull(stated.bankV());
    return StringStudy.alone(on, new Asked(null, of, wanted), bankV, stated);
  }

  // ---- options ----------------------------------------------------------------------------------

  private Stated stated(@Nullable Double homeLowC, @Nullable Double homeHighC) {
    Double lowC = recordLow == null ? homeLowC : options.airC("--record-low", recordLow);
    Double highC = recordHigh == null ? homeHighC : options.airC("--record-high", recordHigh);
    if (lowC != null && highC != null && lowC > highC) {
      options.fault(
          "--record-low",
          "above --record-high",
          "the coldest air is colder than the hottest",
          "Are the two swapped?");
    }
    return new Stated(
        options.positive("--bank-voltage", bankVoltage, Dimension.VOLTAGE),
        options.positive("--charging-voltage", chargingVoltage, Dimension.VOLTAGE),
        lowC,
        highC,
        !noDwellingLimit);
  }

  private List<ArraySpec> chosen(Scenario home) {
    String name = array;
    if (name == null) {
      return home.arrays();
    }
    var known = new ArrayList<String>();
    for (ArraySpec plane : home.arrays()) {
      if (plane.name().equals(name)) {
        return List.of(plane);
      }
      known.add(plane.name());
    }
    String near = Nearest.of(name, known);
    options.fault(
        "--array",
        "found \"" + name + "\"",
        "must be a plane of the scenario: " + names(home),
        near == null ? "Write one of these names." : "Did you mean \"" + near + "\"?");
    options.throwIfAny();
    return List.of();
  }

  private static String names(Scenario home) {
    var quoted = new ArrayList<String>();
    home.arrays().forEach(plane -> quoted.add("\"" + plane.name() + "\""));
    return String.join(", ", quoted);
  }

  private Wanted wanted(int usual, ModuleSpec of) {
    if (modules != null && power != null) {
      options.fault("--power", "beside --modules", "must be one of the two", "Leave one out.");
      return Wanted.modules(1);
    }
    Double powerW = options.positive("--power", power, Dimension.POWER);
    if (powerW != null) {
      if (powerW > Wanted.MOST_MODULES * of.ratedPowerW()) {
        options.fault(
            "--power",
            "found \"" + power + "\"",
            "must be at most " + Wanted.MOST_MODULES + " modules",
            "Is the unit right?");
        return Wanted.modules(1);
      }
      return Wanted.power(powerW);
    }
    int count = modules == null ? usual : modules;
    if (count < 1 || count > Wanted.MOST_MODULES) {
      options.fault(
          "--modules",
          "found " + count,
          "must be 1 to " + Wanted.MOST_MODULES,
          "Choose another number.");
      return Wanted.modules(1);
    }
    return Wanted.modules(count);
  }

  private List<Condition> conditions() {
    var found = new ArrayList<Condition>();
    for (String text : at) {
      Matcher parts = CONDITION.matcher(text.strip());
      if (!parts.matches()) {
        options.fault(
            "--at",
            "found \"" + text + "\"",
            "must be light and cell temperature, such as \"1000 W/m2 25 C\"",
            "Put both between quotation marks.");
        continue;
      }
      double lightWm2 =
          options.within(
              "--at", parts.group(1), Dimension.IRRADIANCE, 1.0, 1500.0, "1 to 1500 W/m2");
      double cellC =
          options.within(
              "--at", parts.group(2), Dimension.TEMPERATURE, -60.0, 100.0, "-60 to 100 C");
      found.add(new Condition(lightWm2, cellC));
    }
    if (found.size() > MOST_CONDITIONS) {
      options.fault(
          "--at",
          "found " + found.size() + " of them",
          "must be " + MOST_CONDITIONS + " at most",
          "A picture with more lines cannot be read.");
    }
    if (!(hour >= 0 && hour < BOX_OF_HOURS)) {
      options.fault("--hour", "found " + hour, "must be 0 to 23", "Write for instance --hour 9.");
    }
    options.throwIfAny();
    return found.isEmpty() ? StringPictures.usualConditions() : found;
  }
}
