package greyspell.electrical;

import greyspell.quantity.Show;
import greyspell.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a stated wire loses, and whether it bears its current. Sizes are judged and compared, never
 * recommended.
 *
 * <pre>
 * drop = I R(T)      loss = I² R(T)      year's loss = R(T) sum of I² h
 * T    = Ta + (Tr - 30) [I / (n It)]², at most Tr
 *
 * I   rated current                          A
 * R   there and back, {@link WireResistance} Ohm
 * It  ampacity of one wire at 30 °C          A      n  wires side by side
 * Tr  insulation rating                      °C     Ta  air around the wire   °C
 * </pre>
 *
 * T follows from the balance of heat that is behind the ampacity table: the table's current warms
 * the wire from 30 °C to its rating, and warming grows with the square of the current. mm² and
 * aluminium have no such figure here: T is then the insulation's rating, which overstates drop and
 * loss. One resistance serves the whole year, so a year's loss is an upper figure by some per cent.
 *
 * <p>Heat passes when 1.25 I is within the table's 75 °C column (terminals are seldom rated higher)
 * and I is within the stated column after correction for the air; I is here the circuit current.
 * Source: NEC 110.14(C), 690.8(B), 310.10(G), 240.4(D), 2017 to 2023 editions (from memory), and
 * {@link Ampacity}. Where the user states what the cable may carry, both are held against that.
 * Without a table and without such a figure the heat is unknown. A drop above three per cent is a
 * caution (common practice, no source). Held by ConductorJudgeTest.
 */
public final class ConductorJudge {
  static final String HEAT = "heat";
  static final String DROP = "voltage drop";
  static final String SMALL = "small wire";
  static final String SIDE_BY_SIDE = "wires side by side";
  private static final double CAUTION_DROP_SHARE = 0.03;
  private static final double MARGIN_SHARE = 0.05;
  private static final double TABLE_AIR_C = 30.0;
  private static final int NEIGHBOURS = 3;

  private ConductorJudge() {}

  public static ConductorJudgement judge(ConductorRun run, RunLoad load) {
    var findings = new ArrayList<Finding>();
    ConductorJudgement.SizeRow stated = row(run, load);
    heat(run, load, findings);
    smallWire(run, load, findings);
    sideBySide(run, findings);
    drop(run, load, stated, findings);
    var sizes = new ArrayList<ConductorJudgement.SizeRow>();
    for (WireSize size : run.size().neighbours(NEIGHBOURS)) {
      sizes.add(size == run.size() ? stated : row(run.withSize(size), load));
    }
    return new ConductorJudgement(run, load, ampacityA(run), stated, sizes, findings);
  }

  /** Metal temperature at this current. */
  static double conductorC(ConductorRun run, double currentA) {
    double ratingC = run.insulation().ratingC();
    double tableA = hasTable(run) ? Ampacity.tableA(run.size(), run.insulation()) : 0.0;
    if (!(tableA > 0.0)) {
      return Math.max(ratingC, run.ambientC());
    }
    double share = currentA / (run.inParallel() * tableA);
    double warmC = run.ambientC() + (ratingC - TABLE_AIR_C) * share * share;
    return Math.min(warmC, Math.max(ratingC, run.ambientC()));
  }

  /** Resistance there and back at the rated current; what the hourly loop may use. */
  public static double workingOhm(ConductorRun run, double ratedA) {
    return WireResistance.loopOhm(run, conductorC(run, ratedA));
  }

  private static ConductorJudgement.SizeRow row(ConductorRun run, RunLoad load) {
    double conductorC = conductorC(run, load.ratedA());
    double loopOhm = WireResistance.loopOhm(run, conductorC);
    double dropV = load.ratedA() * loopOhm;
    return new ConductorJudgement.SizeRow(
        run.size(),
        conductorC,
        loopOhm,
        dropV,
        dropV / load.voltageV(),
        load.ratedA() * dropV,
        load.squareCurrentA2H() * loopOhm);
  }

  private static boolean hasTable(ConductorRun run) {
    return run.size().isAwg() && run.metal() == WireResistance.Metal.COPPER;
  }

  private static @Nullable Double ampacityA(ConductorRun run) {
    if (run.statedAmpacityA() != null) {
      return run.statedAmpacityA();
    }
    if (!hasTable(run)) {
      return null;
    }
    return run.inParallel()
        * Ampacity.tableA(run.size(), run.insulation())
        * Ampacity.ambientFactor(run.insulation(), run.ambientC());
  }

  private static void heat(ConductorRun run, RunLoad load, List<Finding> findings) {
    Double statedA = run.statedAmpacityA();
    Double allowedA = ampacityA(run);
    if (statedA != null) {
      statedHeat(what(run), statedA, load, findings);
    } else if (allowedA == null) {
      findings.add(
          Finding.unknown(
              HEAT,
              what(run) + " at " + Show.current(load.circuitA()) + ": not judged",
              "no table for "
                  + (run.metal() == WireResistance.Metal.ALUMINIUM ? "aluminium" : "mm²")
                  + " is in the program: state allowed_current, what the cable's own table allows as"
                  + " it is laid"));
    } else {
      double terminalA = run.inParallel() * Ampacity.tableA(run.size(), Ampacity.Insulation.C75);
      heat(
          what(run)
              + " bears "
              + Show.current(allowedA)
              + " in "
              + Show.temperature(run.ambientC())
              + " of air, its terminals "
              + Show.current(terminalA)
              + " if marked for 75 °C",
          allowedA,
          terminalA,
          load,
          "too much for hours on end at its terminals; ",
          Ampacity.SOURCE
              + ", "
              + Show.trimmed(run.insulation().ratingC(), 0)
              + " °C column; more than three loaded wires together, or sun on the roof, bear less",
          findings);
    }
  }

  /** By what the user states for the cable, which says nothing of its terminals. */
  static void statedHeat(String what, double statedA, RunLoad load, List<Finding> findings) {
    heat(
        what + " bears " + Show.current(statedA) + " as stated",
        statedA,
        statedA,
        load,
        "too much for hours on end; ",
        "by the current that you state for this cable; its terminals are not looked at",
        findings);
  }

  private static void heat(
      String bears,
      double allowedA,
      double hoursA,
      RunLoad load,
      String tooLong,
      String source,
      List<Finding> findings) {
    double circuitA = load.circuitA();
    double continuousA = StringJudge.CONTINUOUS_FACTOR * circuitA;
    String text =
        bears
            + "; it carries up to "
            + Show.current(circuitA)
            + ", × 1.25 for hours on end = "
            + Show.current(continuousA);
    boolean isTooHot = !(circuitA <= allowedA);
    if (isTooHot || !(continuousA <= hoursA)) {
      findings.add(
          Finding.fail(
              HEAT,
              text,
              (isTooHot ? "the insulation would grow hotter than it bears; " : tooLong) + source));
    } else if (circuitA > allowedA * (1.0 - MARGIN_SHARE)
        || continuousA > hoursA * (1.0 - MARGIN_SHARE)) {
      findings.add(Finding.caution(HEAT, text, "hardly any room; " + source));
    } else {
      findings.add(Finding.pass(HEAT, text, source));
    }
  }

  private static void smallWire(ConductorRun run, RunLoad load, List<Finding> findings) {
    double mostA =
        switch (run.size()) {
          case AWG_14 -> 15.0;
          case AWG_12 -> 20.0;
          case AWG_10 -> 30.0;
          default -> 0.0;
        };
    double continuousA = StringJudge.CONTINUOUS_FACTOR * load.circuitA();
    if (mostA > 0.0
        && run.metal() == WireResistance.Metal.COPPER
        && continuousA > mostA * run.inParallel()) {
      findings.add(
          Finding.caution(
              SMALL,
              "protection that lets "
                  + Show.current(continuousA)
                  + " pass is more than is allowed for "
                  + what(run),
              "NEC 240.4(D), 2017 to 2023 editions (from memory)"));
    }
  }

  private static void sideBySide(ConductorRun run, List<Finding> findings) {
    if (run.inParallel() > 1 && run.size().isAwg() && run.size().compareTo(WireSize.AWG_1_0) < 0) {
      findings.add(
          Finding.caution(
              SIDE_BY_SIDE,
              what(run) + " in each direction",
              "the code joins wires side by side only from 1/0 AWG upward; NEC 310.10(G), 2023"
                  + " edition (from memory)"));
    }
  }

  private static void drop(
      ConductorRun run, RunLoad load, ConductorJudgement.SizeRow row, List<Finding> findings) {
    String text =
        Show.number(row.dropV(), 2)
            + " V of "
            + Show.voltage(load.voltageV())
            + " at "
            + Show.current(load.ratedA())
            + " over "
            + length(run)
            + " one way: "
            + Show.percent(row.dropShare())
            + ", "
            + Show.power(row.lossW())
            + " of heat";
    findings.add(
        row.dropShare() <= CAUTION_DROP_SHARE
            ? Finding.pass(DROP, text, "within 3 % (common practice, no source)")
            : Finding.caution(
                DROP,
                text,
                "above 3 % (common practice, no source): higher voltage, a shorter way or thicker"
                    + " metal lose less"));
  }

  static String what(ConductorRun run) {
    return (run.inParallel() == 1 ? "" : run.inParallel() + " × ")
        + run.size().label()
        + (run.metal() == WireResistance.Metal.COPPER ? " copper" : " aluminium");
  }

  private static String length(ConductorRun run) {
    return Show.trimmed(run.lengthM(), 1)
        + " m"
        + (run.size().isAwg()
            ? " (" + Show.trimmed(Unit.FOOT.fromInside(run.lengthM()), 1) + " ft)"
            : "");
  }
}
