package greyspell.report;

import greyspell.electrical.ConductorJudgement;
import greyspell.electrical.ConductorJudgement.SizeRow;
import greyspell.electrical.ConductorRun;
import greyspell.electrical.WireResistance;
import greyspell.quantity.Dimension;
import greyspell.quantity.Quantity;
import greyspell.quantity.Show;
import greyspell.study.ElectricalCheck.Run;
import java.util.List;

/** What the stated wires lose and whether they bear their currents, for a terminal. */
final class ConductorsText {
  private static final double FOOT_M = Quantity.parse("1 ft", Dimension.LENGTH).inside();

  private ConductorsText() {}

  /** Each run with its findings and its sizes. */
  static void runs(StringBuilder out, List<Run> runs) {
    double lostWh = 0.0;
    boolean isSimulated = false;
    for (Run run : runs) {
      if (run != runs.get(0)) {
        out.append('\n');
      }
      run(out, run);
      lostWh += run.yearLossWh();
      isSimulated |= run.judged().load().isSimulated();
    }
    if (isSimulated && runs.size() > 1) {
      out.append('\n');
      Columns.wrap(out, "", "All stated runs together lose " + Show.energy(lostWh) + " a year.");
    }
  }

  /** "2 × 2/0 AWG copper, 1.5 m (4.9 ft) one way". */
  static String stated(Run run) {
    ConductorRun wire = run.judged().run();
    return (wire.inParallel() == 1 ? "" : wire.inParallel() + " × ")
        + wire.size().label()
        + (wire.metal() == WireResistance.Metal.COPPER ? " copper" : " aluminium")
        + ", "
        + Show.trimmed(wire.lengthM(), 1)
        + " m ("
        + Show.trimmed(wire.lengthM() / FOOT_M, 1)
        + " ft) one way"
        + (run.alike() == 1 ? "" : ", from each of " + run.alike() + " controllers");
  }

  private static void run(StringBuilder out, Run run) {
    ConductorJudgement judged = run.judged();
    Columns.wrap(
        out, "", judged.run().name() + ": " + stated(run) + ": " + judged.verdict().word());
    StringsText.findings(out, judged.findings());
    Columns.wrap(
        out,
        "  ",
        "How drop and loss change with size at the same length and current (not advice on a size; ×"
            + " marks what is stated):");
    var table = new Columns();
    boolean isSimulated = judged.load().isSimulated();
    table.row("", "size", "drop", "of voltage", "heat", isSimulated ? "a year" : "");
    for (SizeRow row : judged.sizes()) {
      table.row(
          row.size() == judged.run().size() ? "×" : "",
          row.size().label(),
          Show.number(row.dropV(), 2) + " V",
          Show.percent(row.dropShare()),
          Show.power(row.lossW()),
          isSimulated ? Show.energy(row.yearLossWh()) : "");
    }
    table.write(out, false);
    if (isSimulated) {
      Columns.wrap(
          out,
          "  ",
          "Lost in a year: "
              + Show.energy(judged.stated().yearLossWh())
              + " of "
              + Show.energy(judged.load().throughputWh())
              + ", "
              + Show.percent(judged.stated().yearLossWh() / judged.load().throughputWh()));
    }
  }
}
