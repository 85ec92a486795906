package greyspell.report;

import greyspell.electrical.ConductorJudgement;
import greyspell.electrical.ConductorJudgement.SizeRow;
import greyspell.electrical.ConductorRun;
import greyspell.electrical.Finding;
import greyspell.electrical.WireResistance;
import greyspell.quantity.Dimension;
import greyspell.quantity.Quantity;
import greyspell.quantity.Show;
import java.util.List;

/** What the stated wires lose and whether they bear their currents, for a terminal. */
public final class ConductorsText {
  private static final double FOOT_M = Quantity.parse("1 ft", Dimension.LENGTH).inside();

  private ConductorsText() {}

  /**
   * Each run with its findings and its sizes.
   *
   * @param surge findings about motor starts, may be empty
   */
  public static String of(List<ConductorJudgement> runs, List<Finding> surge) {
    var out = new StringBuilder();
    double lostWh = 0.0;
    boolean isSimulated = false;
    for (ConductorJudgement judged : runs) {
      run(out, judged);
      lostWh += judged.stated().yearLossWh();
      isSimulated |= judged.load().isSimulated();
    }
    if (isSimulated && runs.size() > 1) {
      Columns.wrap(out, "", "All stated runs together lose " + Show.energy(lostWh) + " a year.");
      out.append('\n');
    }
    if (!surge.isEmpty()) {
      out.append("Motor starts\n");
      StringsText.findings(out, surge);
      out.append('\n');
    }
    return out.append(StringsText.governs()).toString();
  }

  private static void run(StringBuilder out, ConductorJudgement judged) {
    ConductorRun run = judged.run();
    Columns.wrap(
        out,
        "",
        run.name()
            + ": "
            + (run.inParallel() == 1 ? "" : run.inParallel() + " × ")
            + run.size().label()
            + (run.metal() == WireResistance.Metal.COPPER ? " copper" : " aluminium")
            + ", "
            + Show.trimmed(run.lengthM(), 1)
            + " m ("
            + Show.trimmed(run.lengthM() / FOOT_M, 1)
            + " ft) one way: "
            + judged.verdict().word());
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
          row.size() == run.size() ? "×" : "",
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
    out.append('\n');
  }
}
