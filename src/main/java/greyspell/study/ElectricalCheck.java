package greyspell.study;

import greyspell.array.ArraySpec;
import greyspell.array.ControllerKind;
import greyspell.array.ControllerSpec;
import greyspell.array.DataSheetLint;
import greyspell.array.ModuleSpec;
import greyspell.array.SheetFinding;
import greyspell.balance.Forcing;
import greyspell.balance.LedgerColumn;
import greyspell.electrical.ConductorJudge;
import greyspell.electrical.ConductorJudgement;
import greyspell.electrical.ConductorRun;
import greyspell.electrical.Finding;
import greyspell.electrical.LoadJudge;
import greyspell.electrical.RunLoad;
import greyspell.electrical.StringJudge;
import greyspell.electrical.StringRules;
import greyspell.electrical.SurgeJudge;
import greyspell.outcome.Figures.Named;
import greyspell.power.InverterCurve;
import greyspell.quantity.Show;
import greyspell.scenario.Scenario;
import greyspell.scenario.Scenario.Wire;
import greyspell.weather.SiteExtremes;
import java.nio.file.Path;
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
  private static final String WIRES = "Wires";

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
    return new ElectricalCheck(
        List.of(
            new Group("Data sheets", sheets(home), "no modules"),
            new Group("Strings as built", strings(home, rules), "no strings"),
            wires(runs),
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

  /** The same check after a run: only the wires' year is new. */
  public ElectricalCheck withYear(StudyResult result) {
    Scenario home = result.scenario();
    List<Run> year = runs(home, rules(home), result);
    var all = new ArrayList<Group>();
    for (Group group : groups) {
      all.add(group.title().equals(WIRES) ? wires(year) : group);
    }
    return new ElectricalCheck(all, year);
  }

  private static Group wires(List<Run> runs) {
    var findings = new ArrayList<Finding>();
    runs.forEach(run -> findings.addAll(run.judged().namedFindings()));
    return new Group(
        WIRES, findings, "none stated, so neither their heat nor their drop is judged");
  }

  /** What strings of this home are held against. */
  public static StringRules rules(Scenario home) {
    Scenario.Electrical electrical = home.electrical();
    Double lowC = home.site().recordLowC();
    Double highC = home.site().recordHighC();
    SiteExtremes stated = stated(home);
    if (stated != null) {
      lowC = lowC == null ? Double.valueOf(stated.lowC()) : lowC;
      highC = highC == null ? Double.valueOf(stated.highC()) : highC;
    }
    StringRules rules = StringRules.usual(lowC, highC, home.bank());
    if (!electrical.isDwelling()) {
      rules = rules.withDwellingLimitV(null);
    }
    Double chargingV = electrical.chargingV();
    if (chargingV != null) {
      rules = rules.withChargingV(chargingV);
    }
    return rulesFor(home.controller(), rules);
  }

  /**
   * What the weather file states of its place, where the scenario leaves a record out; else null.
   */
  private static @Nullable SiteExtremes stated(Scenario home) {
    boolean isSilent = home.site().recordLowC() == null || home.site().recordHighC() == null;
    return isSilent ? SiteExtremes.find(Path.of(home.weather().resolvedPath())) : null;
  }

  /**
   * Where record temperatures come from if not from the scenario; empty if they do, or are not
   * known.
   */
  public static String recordsFrom(Scenario home) {
    SiteExtremes stated = stated(home);
    return stated == null
        ? ""
        : "Record temperatures that the scenario leaves out are those of the weather file: "
            + Show.temperature(stated.lowC())
            + " and "
            + Show.temperature(stated.highC())
            + ", expected once in 50 years. State record_low and record_high if you know the place's own.";
  }

  /** A controller that does not track joins the strings straight to the bank. */
  public static StringRules rulesFor(ControllerSpec controller, StringRules rules) {
    return controller.kind() == ControllerKind.PWM ? rules.withHeadroomV(0.0) : rules;
  }

  public Finding.Severity worst() {
    return Finding.worst(findings());
  }

  /** What fails, for those who only look at the energy; empty if nothing does. */
  public String failing() {
    var subjects = new ArrayList<String>();
    for (Finding finding : findings()) {
      if (finding.severity() == Finding.Severity.FAIL) {
        subjects.add(finding.subject());
      }
    }
    return subjects.isEmpty()
        ? ""
        : "The electrical check fails: " + String.join("; ", subjects) + ".";
  }

  /** Of all groups. */
  public List<Finding> findings() {
    var all = new ArrayList<Finding>();
    groups.forEach(group -> all.addAll(group.findings()));
    return all;
  }

  // ---- data sheets, strings, starts -------------------------------------------------------------

  private static List<Finding> sheets(Scenario home) {
    var modules = new LinkedHashSet<ModuleSpec>();
    home.arrays().forEach(array -> modules.add(array.module()));
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
    for (String caution : InverterCurve.fit(home.inverter()).cautions()) {
      findings.add(
          Finding.caution(
              "inverter",
              caution.replace("inverter ", ""),
              "the curve that is used must pass through standby and all points"));
    }
    return findings;
  }

  private static List<Finding> strings(Scenario home, StringRules rules) {
    StringJudge.Built built = StringJudge.asBuilt(home.arrays(), home.controller(), rules);
    var findings = new ArrayList<Finding>();
    String from = recordsFrom(home);
    if (!from.isEmpty()) {
      findings.add(
          Finding.caution(
              "record temperatures",
              from.substring(0, from.length() - 1),
              "a record may lie beyond"));
    }
    if (built.missing().isEmpty()) {
      findings.addAll(built.findings());
      return findings;
    }
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
      String plain = caution.endsWith(".") ? caution.substring(0, caution.length() - 1) : caution;
      findings.add(Finding.caution("scenario", plain, "is it meant?"));
    }
    return findings;
  }

  // ---- wires ------------------------------------------------------------------------------------

  /** Losses of the year are those that {@link Wires} put into the books. */
  private static List<Run> runs(Scenario home, StringRules rules, @Nullable StudyResult result) {
    var runs = new ArrayList<Run>();
    for (Wire wire : home.electrical().conductors()) {
      switch (wire.run().kind()) {
        case ARRAY_TO_CONTROLLER -> arrayRuns(home, wire, result, runs);
        case CONTROLLER_TO_BANK -> {
          int count = home.controller().count();
          RunLoad load = RunLoad.ofController(home.controller(), rules, ratedW(home) / count);
          if (result != null) {
            double lostWh = lostWh(result, "controller_wiring");
            double passedWh = result.outcome().total().solarUsedWh() + lostWh;
            load = simulated(load, wire.run(), lostWh / count, passedWh / count, result);
          }
          runs.add(new Run(ConductorJudge.judge(wire.run(), load), count));
        }
        case BANK_TO_INVERTER -> {
          RunLoad load =
              RunLoad.ofInverter(home.inverter(), home.bank(), home.electrical().cutOffV());
          if (result != null) {
            double lostWh = lostWh(result, "inverter_wiring");
            load = simulated(load, wire.run(), lostWh, intoInverterWh(result) + lostWh, result);
          }
          runs.add(new Run(ConductorJudge.judge(wire.run(), load), 1));
        }
      }
    }
    return runs;
  }

  /** A plane's own wire, with what this plane alone sends through it. */
  private static void arrayRuns(
      Scenario home, Wire wire, @Nullable StudyResult result, List<Run> runs) {
    for (int k = 0; k < home.arrays().size(); k++) {
      ArraySpec array = home.arrays().get(k);
      if (!isFor(wire, array)) {
        continue;
      }
      ModuleSpec module = array.module();
      RunLoad load =
          new RunLoad(
              array.inParallel() * module.maxPowerA(),
              StringJudge.BRIGHT_SUN_FACTOR * array.inParallel() * module.shortCircuitA(),
              array.inSeries() * module.maxPowerV(),
              0.0,
              0.0);
      if (result != null) {
        StudyResult.PlaneBooks books = result.planes().get(k);
        double lostWh = books.cableHeatWh();
        load = simulated(load, wire.run(), lostWh, books.availableWh() + lostWh, result);
      }
      boolean isNamed = home.arrays().size() > 1 && !wire.run().name().contains(array.name());
      ConductorRun run =
          isNamed ? named(wire.run(), wire.run().name() + ", " + array.name()) : wire.run();
      runs.add(new Run(ConductorJudge.judge(run, load), 1));
    }
  }

  private static boolean isFor(Wire wire, ArraySpec array) {
    return wire.run().kind() == ConductorRun.Kind.ARRAY_TO_CONTROLLER
        && (wire.arrayName().isEmpty() || wire.arrayName().equals(array.name()));
  }

  /** With the current squared that makes this loss of it. */
  private static RunLoad simulated(
      RunLoad load, ConductorRun run, double lostWh, double passedWh, StudyResult result) {
    double years = result.ledger().forcing().calendar().years();
    double ohm = ConductorJudge.workingOhm(run, load.ratedA());
    return new RunLoad(
        load.ratedA(),
        load.circuitA(),
        load.voltageV(),
        Math.max(0.0, lostWh) / ohm / years,
        passedWh / years);
  }

  private static double lostWh(StudyResult result, String name) {
    for (Named loss : result.outcome().total().lossesWh()) {
      if (loss.name().equals(name)) {
        return loss.wh();
      }
    }
    return 0.0;
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

  /**
   * Served at the sockets and lost in the inverter; its no-load draw is left out, as in the books.
   */
  private static double intoInverterWh(StudyResult result) {
    Forcing forcing = result.ledger().forcing();
    double[] servedWh = LedgerColumn.SERVED.of(result.ledger());
    double[] lossWh = LedgerColumn.INVERTER_LOSS.of(result.ledger());
    double[] overloadWh = LedgerColumn.UNMET_INVERTER.of(result.ledger());
    double sumWh = 0.0;
    for (int h = 0; h < servedWh.length; h++) {
      double acWh = forcing.acAskedWh()[h] - overloadWh[h];
      double bothWh = acWh + forcing.dcAskedWh()[h];
      sumWh += lossWh[h] + (bothWh > 0.0 ? servedWh[h] * acWh / bothWh : 0.0);
    }
    return sumWh;
  }

  private static double ratedW(Scenario home) {
    double sumW = 0.0;
    for (ArraySpec array : home.arrays()) {
      sumW += array.ratedPowerW();
    }
    return sumW;
  }
}
