package greyspell.study;

import greyspell.array.ArraySpec;
import greyspell.balance.Forcing;
import greyspell.balance.LedgerColumn;
import greyspell.electrical.ConductorJudge;
import greyspell.electrical.ConductorRun;
import greyspell.electrical.Finding;
import greyspell.electrical.RunLoad;
import greyspell.electrical.StringRules;
import greyspell.electrical.UnknownRun;
import greyspell.outcome.Figures.Named;
import greyspell.quantity.Show;
import greyspell.scenario.Scenario;
import greyspell.scenario.Scenario.UnknownWire;
import greyspell.scenario.Scenario.Wire;
import greyspell.study.ElectricalCheck.Run;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** The runs of wire of one home, each with what flows through it, judged. */
final class WireCheck {
  /** Wires do not ask for the record temperatures, so no weather file need be read for them. */
  static final Records NO_RECORDS = new Records(null, null, List.of());

  private static final String NOT_BOOKED = "no loss of it is booked";

  private final Scenario home;
  private final StringRules rules;

  WireCheck(Scenario home, StringRules rules) {
    this.home = home;
    this.rules = rules;
  }

  /** Runs of wire that fail or cannot be judged, by their names; weather is not asked. */
  static Set<String> failing(Scenario home) {
    var check = new WireCheck(home, ElectricalCheck.rules(home, NO_RECORDS));
    var failing = new TreeSet<String>();
    for (Run run : check.runs(null)) {
      if (run.judged().findings().stream().anyMatch(f -> f.severity().isRefused())) {
        failing.add(run.judged().run().name());
      }
    }
    return failing;
  }

  /** Losses of the year are those that {@link Wires} put into the books. */
  List<Run> runs(@Nullable StudyResult result) {
    var runs = new ArrayList<Run>();
    for (Wire wire : home.electrical().conductors()) {
      switch (wire.run().kind()) {
        case ARRAY_TO_CONTROLLER -> arrayRuns(wire, result, runs);
        case CONTROLLER_TO_BANK -> {
          int count = home.controller().count();
          RunLoad load = RunLoad.ofController(home.controller(), rules, broughtW() / count);
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
  private void arrayRuns(Wire wire, @Nullable StudyResult result, List<Run> runs) {
    for (int k = 0; k < home.arrays().size(); k++) {
      ArraySpec array = home.arrays().get(k);
      if (!isFor(wire, array)) {
        continue;
      }
      RunLoad load = RunLoad.ofArray(array, home.controller(), home.bank().nominalV());
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

  /** What is found of the wires; of those of unknown size what can be said. */
  ElectricalCheck.Group group(List<Run> runs) {
    var findings = new ArrayList<Finding>();
    runs.forEach(run -> findings.addAll(run.judged().namedFindings()));
    for (UnknownWire wire : home.electrical().unknownConductors()) {
      unknown(wire, findings);
    }
    return new ElectricalCheck.Group(
        ElectricalCheck.WIRES,
        findings,
        "none stated, so neither their heat nor their drop is judged");
  }

  /** A wire of unknown size, for each plane that it may serve. */
  private void unknown(UnknownWire wire, List<Finding> findings) {
    UnknownRun run = wire.run();
    switch (run.kind()) {
      case ARRAY_TO_CONTROLLER -> {
        for (ArraySpec array : home.arrays()) {
          if (wire.arrayName().isEmpty() || wire.arrayName().equals(array.name())) {
            boolean isNamed = home.arrays().size() > 1 && !run.name().contains(array.name());
            add(
                run.name() + (isNamed ? ", " + array.name() : ""),
                run.findings(
                    RunLoad.ofArray(array, home.controller(), home.bank().nominalV()),
                    "no loss of it is booked but the plane's flat wiring_loss of "
                        + Show.percent(array.wiringFraction())),
                findings);
          }
        }
      }
      case CONTROLLER_TO_BANK ->
          add(
              run.name(),
              run.findings(
                  RunLoad.ofController(
                      home.controller(), rules, broughtW() / home.controller().count()),
                  NOT_BOOKED),
              findings);
      case BANK_TO_INVERTER ->
          add(
              run.name(),
              run.findings(
                  RunLoad.ofInverter(home.inverter(), home.bank(), home.electrical().cutOffV()),
                  NOT_BOOKED),
              findings);
    }
  }

  private static void add(String name, List<Finding> found, List<Finding> findings) {
    for (Finding f : found) {
      findings.add(new Finding(f.severity(), name + ": " + f.subject(), f.text(), f.reason()));
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

  private double broughtW() {
    double sumW = 0.0;
    for (ArraySpec array : home.arrays()) {
      sumW += RunLoad.broughtW(array, home.controller(), home.bank().nominalV());
    }
    return sumW;
  }
}
