package greyspell.cli;

import greyspell.array.ArraySpec;
import greyspell.array.ControllerSpec;
import greyspell.array.ModuleSpec;
import greyspell.chart.CurvePictures.Condition;
import greyspell.chart.StringPictures;
import greyspell.electrical.Finding;
import greyspell.electrical.StringJudge;
import greyspell.electrical.StringJudgement;
import greyspell.electrical.StringRules;
import greyspell.electrical.Wanted;
import greyspell.quantity.BadInput;
import greyspell.quantity.Dimension;
import greyspell.quantity.Fault;
import greyspell.quantity.Nearest;
import greyspell.quantity.Place;
import greyspell.quantity.Quantity;
import greyspell.quantity.Show;
import greyspell.report.PlanesText;
import greyspell.report.StringFiles;
import greyspell.report.StringsText;
import greyspell.scenario.EquipmentReader;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioReader;
import greyspell.study.ElectricalCheck;
import greyspell.study.PlanesCompared;
import greyspell.study.Records;
import greyspell.study.StringYears;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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
      "Example: greyspell strings --module \"Orrin Bay OB-410H\" --controller \"Sable Ridge SR-250-100\""
          + " --power 5kW --bank-voltage 51.2V --record-low=-16C --record-high 34C",
      "",
      "What cannot be judged is not passed: without the record temperatures, the controller's highest",
      "voltage and current and the module's highest system voltage no arrangement is allowed.",
      "",
      "Exit codes: 0 some arrangement of every plane is allowed; 1 none is, or it cannot be judged; 2 bad input."
    },
    mixinStandardHelpOptions = true)
final class StringsCommand implements Callable<Integer> {
  /** The highest of the usual ones, that of lead-acid; common practice, no source. */
  private static final double HIGHEST_CHARGING_FACTOR = 1.2;

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

  private StringYears.@Nullable Weather weather;
  private final List<Fault> faults = new ArrayList<>();
  private final List<Finding> recordNotes = new ArrayList<>();

  @Override
  public Integer call() {
    PrintWriter screen = spec.commandLine().getOut();
    List<Condition> conditions = conditions();
    Path file = scenario;
    Scenario home = file == null ? null : ScenarioReader.read(file, library.folder());
    List<StringJudgement> all = home == null ? List.of(bare()) : planes(home);
    screen.print(StringsText.notes(recordNotes));
    var drawn = new ArrayList<StringPictures.Named>();
    boolean isSomethingAllowed = true;
    for (int k = 0; k < all.size(); k++) {
      StringJudgement judged = all.get(k);
      if (k > 0) {
        screen.println();
      }
      if (home != null && home.arrays().size() > 1) {
        screen.print(StringsText.plane(plane(home, k).name(), home.arrays().size()));
      }
      screen.print(home == null ? StringsText.of(judged) : withYears(home, k, judged));
      isSomethingAllowed &= judged.best() != null;
      if (pictures != null) {
        drawn.addAll(
            StringPictures.of(
                judged,
                conditions,
                home == null ? null : plane(home, k),
                k == 0 ? "" : "-" + (k + 1)));
      }
    }
    Path folder = pictures;
    if (folder != null) {
      PlanesCompared compared = home == null ? null : compared(home);
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
    return isSomethingAllowed ? 0 : Main.FOUND;
  }

  // ---- what is judged ---------------------------------------------------------------------------

  private List<StringJudgement> planes(Scenario home) {
    List<ArraySpec> chosen = chosen(home);
    boolean isSized = modules != null || power != null;
    if (isSized && chosen.size() > 1) {
      fault(
          "--array",
          "not stated",
          "must name the plane that --modules or --power is for: " + names(home),
          "Write for instance --array \"" + chosen.get(0).name() + "\".");
    }
    ControllerSpec on =
        controller == null
            ? home.controller()
            : EquipmentReader.controller(library.folder(), controller, "--controller");
    ModuleSpec instead =
        module == null ? null : EquipmentReader.module(library.folder(), module, "--module");
    Double lowC = recordLow == null ? home.site().recordLowC() : airC("--record-low", recordLow);
    Double highC =
        recordHigh == null ? home.site().recordHighC() : airC("--record-high", recordHigh);
    refuseSwapped(lowC, highC);
    throwIfAny();
    Records records = Records.of(home, lowC, highC);
    recordNotes.addAll(records.findings());
    StringRules rules = ElectricalCheck.rulesFor(on, changed(ElectricalCheck.rules(home, records)));
    var judged = new ArrayList<StringJudgement>();
    for (ArraySpec plane : chosen) {
      ModuleSpec of = instead == null ? plane.module() : instead;
      noteSheet(of);
      Wanted wanted = wanted(plane.modules(), of);
      throwIfAny();
      judged.add(StringJudge.judge(of, on, rules, wanted));
    }
    return judged;
  }

  /** The plane of the judgement in this place. */
  private ArraySpec plane(Scenario home, int place) {
    return chosen(home).get(place);
  }

  /** Weather that cannot be read hides the energy, not what is safe. */
  private String withYears(Scenario home, int place, StringJudgement judged) {
    if (!judged.isJudged()) {
      return StringsText.of(judged);
    }
    try {
      StringYears.Weather known = weather;
      if (known == null) {
        known = StringYears.Weather.read(home);
        weather = known;
      }
      StringYears years = known.of(plane(home, place), judged);
      return StringsText.of(
          judged,
          years,
          "kWh a year are left out: no curve fits this module, and the controller does not track.");
    } catch (BadInput e) {
      Fault first = e.faults().get(0);
      return StringsText.of(
          judged,
          null,
          "kWh a year are left out, because the weather cannot be read: "
              + first.place()
              + ", "
              + first.found()
              + ".");
    }
  }

  private StringJudgement bare() {
    String moduleName = module;
    String controllerName = controller;
    if (moduleName == null || controllerName == null || bankVoltage == null) {
      fault(
          "strings",
          "no SCENARIO, and not all of --module, --controller, --bank-voltage",
          "must be a scenario file, or these three",
          "See: greyspell strings --help");
    }
    if (modules == null && power == null) {
      fault(
          "--modules",
          "not stated, and no --power either",
          "must say how many modules, or how much power",
          "Write for instance --modules 12 or --power 5kW.");
    }
    if (array != null) {
      fault("--array", "without a scenario", "names a plane of a scenario", "Leave it out.");
    }
    throwIfAny();
    ModuleSpec of =
        EquipmentReader.module(library.folder(), String.valueOf(moduleName), "--module");
    ControllerSpec on =
        EquipmentReader.controller(
            library.folder(), String.valueOf(controllerName), "--controller");
    double bankV = positive("--bank-voltage", String.valueOf(bankVoltage), Dimension.VOLTAGE);
    throwIfAny();
    noteSheet(of);
    if (chargingVoltage == null) {
      recordNotes.add(
          Finding.caution(
              "charging voltage",
              "not stated: "
                  + Show.voltage(HIGHEST_CHARGING_FACTOR * bankV)
                  + " is taken, 1.2 times the bank's",
              "as high as lead-acid banks are charged, higher than most others (common practice, no"
                  + " source): state --charging-voltage"));
    }
    StringRules rules =
        changed(
            new StringRules(
                null,
                null,
                StringRules.DWELLING_LIMIT_V,
                bankV,
                HIGHEST_CHARGING_FACTOR * bankV,
                StringRules.USUAL_HEADROOM_V,
                StringRules.USUAL_MARGIN_SHARE));
    Wanted wanted = wanted(1, of);
    throwIfAny();
    return StringJudge.judge(of, on, ElectricalCheck.rulesFor(on, rules), wanted);
  }

  /** A misread sticker makes every verdict below it doubtful. */
  private void noteSheet(ModuleSpec of) {
    for (Finding finding : ElectricalCheck.sheet(of)) {
      if (!recordNotes.contains(finding)) {
        recordNotes.add(finding);
      }
    }
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
    fault(
        "--array",
        "found \"" + name + "\"",
        "must be a plane of the scenario: " + names(home),
        near == null ? "Write one of these names." : "Did you mean \"" + near + "\"?");
    throw new BadInput(faults);
  }

  private static String names(Scenario home) {
    var quoted = new ArrayList<String>();
    home.arrays().forEach(plane -> quoted.add("\"" + plane.name() + "\""));
    return String.join(", ", quoted);
  }

  /** The first two planes with the same module. */
  private @Nullable PlanesCompared compared(Scenario home) {
    List<ArraySpec> planes = home.arrays();
    for (int a = 0; a < planes.size(); a++) {
      for (int b = a + 1; b < planes.size(); b++) {
        if (planes.get(a).module().equals(planes.get(b).module())) {
          return PlanesCompared.of(home, planes.get(a), planes.get(b), hour);
        }
      }
    }
    return null;
  }

  // ---- options ----------------------------------------------------------------------------------

  /** With what the options state in place of the scenario's. */
  private StringRules changed(StringRules rules) {
    Double bankV =
        bankVoltage == null ? null : positive("--bank-voltage", bankVoltage, Dimension.VOLTAGE);
    Double chargingV =
        chargingVoltage == null
            ? null
            : positive("--charging-voltage", chargingVoltage, Dimension.VOLTAGE);
    Double lowC = recordLow == null ? rules.recordLowC() : airC("--record-low", recordLow);
    Double highC = recordHigh == null ? rules.recordHighC() : airC("--record-high", recordHigh);
    refuseSwapped(lowC, highC);
    throwIfAny();
    double nominalV = bankV == null ? rules.bankV() : bankV;
    return new StringRules(
        lowC,
        highC,
        noDwellingLimit ? null : rules.dwellingLimitV(),
        nominalV,
        chargingV == null ? rules.chargingV() * nominalV / rules.bankV() : chargingV,
        rules.headroomV(),
        rules.marginShare());
  }

  private void refuseSwapped(@Nullable Double lowC, @Nullable Double highC) {
    if (lowC != null && highC != null && lowC > highC) {
      fault(
          "--record-low",
          "above --record-high",
          "the coldest air is colder than the hottest",
          "Are the two swapped?");
    }
  }

  private Wanted wanted(int usual, ModuleSpec of) {
    if (modules != null && power != null) {
      fault("--power", "beside --modules", "must be one of the two", "Leave one out.");
      return Wanted.modules(1);
    }
    String wantedPower = power;
    if (wantedPower != null) {
      double powerW = positive("--power", wantedPower, Dimension.POWER);
      if (powerW > Wanted.MOST_MODULES * of.ratedPowerW()) {
        fault(
            "--power",
            "found \"" + wantedPower + "\"",
            "must be at most " + Wanted.MOST_MODULES + " modules",
            "Is the unit right?");
        return Wanted.modules(1);
      }
      return Wanted.power(powerW);
    }
    int count = modules == null ? usual : modules;
    if (count < 1 || count > Wanted.MOST_MODULES) {
      fault(
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
        fault(
            "--at",
            "found \"" + text + "\"",
            "must be light and cell temperature, such as \"1000 W/m2 25 C\"",
            "Put both between quotation marks.");
        continue;
      }
      double lightWm2 =
          within("--at", parts.group(1), Dimension.IRRADIANCE, 1.0, 1500.0, "1 to 1500 W/m2");
      double cellC =
          within("--at", parts.group(2), Dimension.TEMPERATURE, -60.0, 100.0, "-60 to 100 C");
      found.add(new Condition(lightWm2, cellC));
    }
    if (found.size() > MOST_CONDITIONS) {
      fault(
          "--at",
          "found " + found.size() + " of them",
          "must be " + MOST_CONDITIONS + " at most",
          "A picture with more lines cannot be read.");
    }
    if (!(hour >= 0 && hour < BOX_OF_HOURS)) {
      fault("--hour", "found " + hour, "must be 0 to 23", "Write for instance --hour 9.");
    }
    throwIfAny();
    return found.isEmpty() ? StringPictures.usualConditions() : found;
  }

  private Double airC(String option, String text) {
    return within(option, text, Dimension.TEMPERATURE, -90.0, 60.0, "-90 to 60 C");
  }

  private double positive(String option, String text, Dimension dimension) {
    return within(option, text, dimension, Double.MIN_VALUE, 1e9, "above 0");
  }

  /** Something harmless after a fault, so that the next option is read too. */
  private double within(
      String option, String text, Dimension dimension, double low, double high, String range) {
    try {
      double value = Quantity.parse(text, dimension).inside();
      if (value >= low && value <= high) {
        return value;
      }
      fault(option, "found \"" + text + "\"", "must be " + range, "Is the unit right?");
    } catch (Quantity.NotUnderstood e) {
      fault(option, "found \"" + text + "\"", e.expected(), e.mend());
    }
    return Math.max(low, 1.0);
  }

  private void fault(String option, String found, String expected, String mend) {
    var fault = new Fault(Place.of(option), found, expected, mend);
    if (!faults.contains(fault)) {
      faults.add(fault);
    }
  }

  private void throwIfAny() {
    if (!faults.isEmpty()) {
      throw new BadInput(faults);
    }
  }
}
