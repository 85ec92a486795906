package greyspell.study;

import greyspell.array.ArraySpec;
import greyspell.array.ControllerKind;
import greyspell.array.ControllerSpec;
import greyspell.array.DataSheetLint;
import greyspell.array.ModuleSpec;
import greyspell.array.SheetFinding;
import greyspell.balance.Forcing;
import greyspell.balance.LedgerColumn;
import greyspell.balance.NamedHours;
import greyspell.electrical.ConductorJudge;
import greyspell.electrical.ConductorJudgement;
import greyspell.electrical.ConductorRun;
import greyspell.electrical.Finding;
import greyspell.electrical.LoadJudge;
import greyspell.electrical.RunLoad;
import greyspell.electrical.StringJudge;
import greyspell.electrical.StringRules;
import greyspell.electrical.SurgeJudge;
import greyspell.scenario.Scenario;
import greyspell.scenario.Scenario.Wire;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Everything about one home that can be judged before, or beside, a run: data sheets, strings as
 * built, wires, motor starts, loads, and what is unusual in the scenario. Only gathers; what is
 * judged stands in {@code electrical} and {@code array}.
 */
public record ElectricalCheck(List<Group> groups, List<Run> runs) {
  public ElectricalCheck {
    groups = List.copyOf(groups);
    runs = List.copyOf(runs);
  }

  /**
   * Findings under one heading.
   *
   * @param ifEmpty why there are none, a few words
   */
  public record Group(String title, List<Finding> findings, String ifEmpty) {
    public Group {
      findings = List.copyOf(findings);
    }
  }

  /**
   * A run of wire, judged.
   *
   * @param alike how many such runs there are, one from each controller
   */
  public record Run(ConductorJudgement judged, int alike) {
    /** Of all alike runs; 0 if nothing was simulated. */
    public double yearLossWh() {
      return alike * judged.stated().yearLossWh();
    }
  }

  /** With a result the wires are also held against the simulated year. */
  public static ElectricalCheck of(Scenario home, @Nullable StudyResult result) {
    StringRules rules = rules(home);
    List<Run> runs = runs(home, rules, result);
    var wires = new ArrayList<Finding>();
    runs.forEach(run -> wires.addAll(run.judged().namedFindings()));
    return new ElectricalCheck(
        List.of(
            new Group("Data sheets", sheets(home.arrays()), "no modules"),
            new Group("Strings as built", strings(home, rules), "no strings"),
            new Group(
                "Wires", wires, "none stated, so neither their heat nor their drop is judged"),
            new Group(
                "Motor starts on the bank",
                surge(home),
                "the inverter's surge power is not stated"),
            new Group(
                "Loads",
                LoadJudge.judge(home.load().appliances(), home.inverter()),
                "no list of appliances"),
            new Group("Plausibility", plausibility(home), "nothing unusual")),
        runs);
  }

  /** What strings of this home are held against. */
  public static StringRules rules(Scenario home) {
    Scenario.Electrical electrical = home.electrical();
    StringRules rules =
        StringRules.usual(home.site().recordLowC(), home.site().recordHighC(), home.bank());
    if (!electrical.isDwelling()) {
      rules = rules.withDwellingLimitV(null);
    }
    Double chargingV = electrical.chargingV();
    if (chargingV != null) {
      rules = rules.withChargingV(chargingV);
    }
    return rulesFor(home.controller(), rules);
  }

  /** A controller that does not track joins the strings straight to the bank. */
  public static StringRules rulesFor(ControllerSpec controller, StringRules rules) {
    return controller.kind() == ControllerKind.PWM ? rules.withHeadroomV(0.0) : rules;
  }

  public Finding.Severity worst() {
    return Finding.worst(findings());
  }

  /** Of all groups. */
  public List<Finding> findings() {
    var all = new ArrayList<Finding>();
    groups.forEach(group -> all.addAll(group.findings()));
    return all;
  }

  // ---- data sheets, strings, starts -------------------------------------------------------------

  private static List<Finding> sheets(List<ArraySpec> arrays) {
    var modules = new LinkedHashSet<ModuleSpec>();
    arrays.forEach(array -> modules.add(array.module()));
    var findings = new ArrayList<Finding>();
    for (ModuleSpec module : modules) {
      List<SheetFinding> off = DataSheetLint.of(module);
      for (SheetFinding f : off) {
        findings.add(
            new Finding(
                f.severity() == SheetFinding.Severity.FAIL
                    ? Finding.Severity.FAIL
                    : Finding.Severity.CAUTION,
                module.name() + ": " + f.suspect(),
                f.finding(),
                "compare with the sticker; what is wrong is a guess from the other figures"));
      }
      if (off.isEmpty()) {
        findings.add(
            Finding.pass(
                module.name(),
                "power, voltages, currents and coefficients fit each other",
                "checked against what modules usually have (common practice, no source)"));
      }
    }
    return findings;
  }

  private static List<Finding> strings(Scenario home, StringRules rules) {
    StringJudge.Built built = StringJudge.asBuilt(home.arrays(), home.controller(), rules);
    if (built.missing().isEmpty()) {
      return built.findings();
    }
    var findings = new ArrayList<Finding>();
    for (String sentence : built.missing()) {
      findings.add(
          Finding.caution(
              "strings",
              "not judged. " + sentence,
              "under \"site\" write for instance \"record_low: -16 °C\" and \"record_high: 34 °C\","
                  + " from the nearest weather station's records"));
    }
    return findings;
  }

  private static List<Finding> surge(Scenario home) {
    Double cableOhm = null;
    for (Wire wire : home.electrical().conductors()) {
      if (wire.run().kind() == ConductorRun.Kind.BANK_TO_INVERTER) {
        double ratedA =
            RunLoad.ofInverter(home.inverter(), home.bank(), home.electrical().cutOffV()).ratedA();
        cableOhm =
            (cableOhm == null ? 0.0 : cableOhm) + ConductorJudge.workingOhm(wire.run(), ratedA);
      }
    }
    return SurgeJudge.judge(
        home.inverter(),
        home.bank(),
        new SurgeJudge.Path(
            null, home.electrical().bankOhm(), cableOhm, home.electrical().cutOffV()));
  }

  private static List<Finding> plausibility(Scenario home) {
    var findings = new ArrayList<Finding>();
    for (String caution : home.cautions()) {
      String plain =
          caution.endsWith(".") ? caution.substring(0, caution.length() - 1) : caution;
      findings.add(Finding.caution("scenario", plain, "unusual but possible; is it meant?"));
    }
    return findings;
  }

  // ---- wires ------------------------------------------------------------------------------------

  private static List<Run> runs(Scenario home, StringRules rules, @Nullable StudyResult result) {
    var runs = new ArrayList<Run>();
    for (Wire wire : home.electrical().conductors()) {
      switch (wire.run().kind()) {
        case ARRAY_TO_CONTROLLER -> arrayRuns(home, wire, result, runs);
        case CONTROLLER_TO_BANK -> {
          int count = home.controller().count();
          RunLoad load = RunLoad.ofController(home.controller(), rules, ratedW(home) / count);
          if (result != null) {
            double[] oneWh = scaled(LedgerColumn.SOLAR_USED.of(result.ledger()), 1.0 / count);
            load = load.withHours(oneWh, home.bank().nominalV(), years(result));
          }
          runs.add(new Run(ConductorJudge.judge(wire.run(), load), count));
        }
        case BANK_TO_INVERTER -> {
          RunLoad load =
              RunLoad.ofInverter(home.inverter(), home.bank(), home.electrical().cutOffV());
          if (result != null) {
            load = load.withHours(inverterWh(result), home.bank().nominalV(), years(result));
          }
          runs.add(new Run(ConductorJudge.judge(wire.run(), load), 1));
        }
      }
    }
    return runs;
  }

  /**
   * A plane's own wire. Of the simulated year the plane takes its share of what was available by
   * rated power, at the operating voltage of test conditions: good to some per cent where planes
   * look different ways.
   */
  private static void arrayRuns(
      Scenario home, Wire wire, @Nullable StudyResult result, List<Run> runs) {
    for (ArraySpec array : home.arrays()) {
      if (!wire.arrayName().isEmpty() && !wire.arrayName().equals(array.name())) {
        continue;
      }
      ModuleSpec module = array.module();
      double voltageV = array.inSeries() * module.maxPowerV();
      RunLoad load =
          new RunLoad(
              array.inParallel() * module.maxPowerA(),
              StringJudge.BRIGHT_SUN_FACTOR * array.inParallel() * module.shortCircuitA(),
              voltageV,
              0.0,
              0.0);
      if (result != null) {
        double share = array.ratedPowerW() / ratedW(home);
        load =
            load.withHours(
                scaled(result.ledger().forcing().solarAvailableWh(), share),
                voltageV,
                years(result));
      }
      boolean isNamed = home.arrays().size() > 1 && !wire.run().name().contains(array.name());
      ConductorRun run =
          isNamed ? named(wire.run(), wire.run().name() + ", " + array.name()) : wire.run();
      runs.add(new Run(ConductorJudge.judge(run, load), 1));
    }
  }

  private static ConductorRun named(ConductorRun run, String name) {
    return new ConductorRun(
        run.kind(),
        name,
        run.lengthM(),
        run.size(),
        run.strands(),
        run.metal(),
        run.inParallel(),
        run.ambientC(),
        run.insulation(),
        run.statedAmpacityA());
  }

  /** Direct current into the inverter: what it serves, loses and draws by itself. */
  private static double[] inverterWh(StudyResult result) {
    Forcing forcing = result.ledger().forcing();
    double[] servedWh = LedgerColumn.SERVED.of(result.ledger());
    double[] lossWh = LedgerColumn.INVERTER_LOSS.of(result.ledger());
    double[] standingWh = LedgerColumn.STANDING.of(result.ledger());
    double[] overloadWh = LedgerColumn.UNMET_INVERTER.of(result.ledger());
    double[] ownWh = new double[servedWh.length];
    for (NamedHours part : forcing.standingParts()) {
      if (part.name().equals("standing_inverter")) {
        ownWh = part.wh();
      }
    }
    var into = new double[servedWh.length];
    for (int h = 0; h < into.length; h++) {
      double acWh = forcing.acAskedWh()[h] - overloadWh[h];
      double bothWh = acWh + forcing.dcAskedWh()[h];
      double allStandingWh = forcing.standingWh()[h];
      into[h] =
          lossWh[h]
              + (bothWh > 0.0 ? servedWh[h] * acWh / bothWh : 0.0)
              + (allStandingWh > 0.0 ? standingWh[h] * ownWh[h] / allStandingWh : 0.0);
    }
    return into;
  }

  private static double ratedW(Scenario home) {
    double sumW = 0.0;
    for (ArraySpec array : home.arrays()) {
      sumW += array.ratedPowerW();
    }
    return sumW;
  }

  private static double years(StudyResult result) {
    return result.ledger().forcing().calendar().years();
  }

  private static double[] scaled(double[] wh, double factor) {
    var out = new double[wh.length];
    for (int h = 0; h < wh.length; h++) {
      out[h] = wh[h] * factor;
    }
    return out;
  }
}
