package greyspell.study;

import greyspell.array.ArraySpec;
import greyspell.array.ControllerKind;
import greyspell.array.ControllerSpec;
import greyspell.array.DataSheetLint;
import greyspell.array.ModuleSpec;
import greyspell.array.SheetFinding;
import greyspell.electrical.ConductorJudge;
import greyspell.electrical.ConductorJudgement;
import greyspell.electrical.ConductorRun;
import greyspell.electrical.Finding;
import greyspell.electrical.LoadJudge;
import greyspell.electrical.RunLoad;
import greyspell.electrical.StringGlance;
import greyspell.electrical.StringJudge;
import greyspell.electrical.StringRules;
import greyspell.electrical.SurgeJudge;
import greyspell.power.InverterCurve;
import greyspell.scenario.Scenario;
import greyspell.scenario.Scenario.Wire;
import greyspell.storage.CellSheet;
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
  /** Title of the group about the strings that the scenario has. */
  public static final String STRINGS_AS_BUILT = "Strings as built";

  static final String WIRES = "Wires";

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

    /** Whether these are the findings about wires. */
    public boolean isWires() {
      return title.equals(WIRES);
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
    Records records = Records.of(home);
    StringRules rules = rules(home, records);
    var wires = new WireCheck(home, rules);
    List<Run> runs = wires.runs(result);
    return new ElectricalCheck(
        List.of(
            new Group("Data sheets", sheets(home), "no modules"),
            new Group(STRINGS_AS_BUILT, strings(home, records, rules), "no strings"),
            wires.group(runs),
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
    var wires = new WireCheck(home, rules(home, WireCheck.NO_RECORDS));
    List<Run> year = wires.runs(result);
    var all = new ArrayList<Group>();
    for (Group group : groups) {
      all.add(group.title().equals(WIRES) ? wires.group(year) : group);
    }
    return new ElectricalCheck(all, year);
  }

  /** What strings of this home are held against. */
  public static StringRules rules(Scenario home, Records records) {
    Scenario.Electrical electrical = home.electrical();
    StringRules rules = StringRules.usual(records.lowC(), records.highC(), home.bank());
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

  /** What fails or cannot be judged, for those who only look at the energy; empty if nothing. */
  public String failing() {
    String fails = subjects(Finding.Severity.FAIL);
    String unknown = subjects(Finding.Severity.UNKNOWN);
    return (fails.isEmpty() ? "" : "The electrical check fails: " + fails + ".")
        + (fails.isEmpty() || unknown.isEmpty() ? "" : " ")
        + (unknown.isEmpty()
            ? ""
            : "The electrical check cannot judge, and so does not pass: " + unknown + ".");
  }

  private String subjects(Finding.Severity severity) {
    var subjects = new LinkedHashSet<String>();
    for (Finding finding : findings()) {
      if (finding.severity() == severity) {
        subjects.add(finding.subject());
      }
    }
    return String.join("; ", subjects);
  }

  /** Of all groups. */
  public List<Finding> findings() {
    var all = new ArrayList<Finding>();
    groups.forEach(group -> all.addAll(group.findings()));
    return all;
  }

  /** What is off on a module's data sheet; empty if nothing is. */
  public static List<Finding> sheet(ModuleSpec module) {
    var findings = new ArrayList<Finding>();
    for (SheetFinding f : DataSheetLint.of(module)) {
      findings.add(
          new Finding(
              f.severity() == SheetFinding.Severity.FAIL
                  ? Finding.Severity.FAIL
                  : Finding.Severity.CAUTION,
              module.name() + ": " + f.suspect(),
              f.finding(),
              "compare with the sticker; what is wrong is a guess from the other figures"));
    }
    return findings;
  }

  private static List<Finding> sheets(Scenario home) {
    var modules = new LinkedHashSet<ModuleSpec>();
    home.arrays().forEach(array -> modules.add(array.module()));
    var findings = new ArrayList<Finding>();
    for (ModuleSpec module : modules) {
      List<Finding> off = sheet(module);
      findings.addAll(off);
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

  private static List<Finding> strings(Scenario home, Records records, StringRules rules) {
    StringJudge.Built built = StringJudge.asBuilt(home.arrays(), home.controller(), rules);
    var findings = new ArrayList<Finding>(records.findings());
    for (String sentence : built.missing()) {
      findings.add(
          Finding.unknown(
              "strings in cold and heat",
              "not judged. " + sentence,
              "under \"site\" write for instance \"record_low: -16 °C\" and \"record_high: 34 °C\","
                  + " from the nearest weather station's records"));
    }
    findings.addAll(built.findings());
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
        new SurgeJudge.Path(null, bankOhm(home), cableOhm, home.electrical().cutOffV()));
  }

  /** What the scenario's reader noticed, but for what is told of the strings above. */
  private static List<Finding> plausibility(Scenario home) {
    List<String> told = StringGlance.of(home.arrays(), home.controller(), home.site().recordLowC());
    var findings = new ArrayList<Finding>();
    for (String caution : home.cautions()) {
      if (told.contains(caution) || isToldElsewhere(home, caution)) {
        continue;
      }
      String plain = caution.endsWith(".") ? caution.substring(0, caution.length() - 1) : caution;
      findings.add(Finding.caution("scenario", plain, "is it meant?"));
    }
    return findings;
  }

  /** Of a misread sheet and of a medical load the check speaks itself. */
  private static boolean isToldElsewhere(Scenario home, String caution) {
    for (ArraySpec array : home.arrays()) {
      ModuleSpec module = array.module();
      if (caution.startsWith(module.name() + ": rated power ") && !sheet(module).isEmpty()) {
        return true;
      }
    }
    return caution.contains(" is marked medical: ");
  }

  /** Of the bank: as stated, else that of a bank in detail; null if neither tells. */
  public static @Nullable Double bankOhm(Scenario home) {
    Double stated = home.electrical().bankOhm();
    CellSheet cells = home.bank().cells();
    return stated == null && cells != null ? Double.valueOf(cells.resistanceOhm()) : stated;
  }
}
