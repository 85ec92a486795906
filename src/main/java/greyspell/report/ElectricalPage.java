package greyspell.report;

import greyspell.balance.NamedHours;
import greyspell.chart.Say;
import greyspell.electrical.ConductorJudgement.SizeRow;
import greyspell.electrical.Finding;
import greyspell.electrical.Finding.Severity;
import greyspell.electrical.LocalCode;
import greyspell.quantity.Show;
import greyspell.report.Page.Row;
import greyspell.report.Page.Table;
import greyspell.study.ElectricalCheck;
import greyspell.study.ElectricalCheck.Group;
import greyspell.study.ElectricalCheck.Run;
import greyspell.study.StudyResult;
import java.util.ArrayList;
import java.util.List;

/**
 * The page's electrical section, in words ready to print.
 *
 * @param summary how much failed
 * @param findings verdict, what was looked at, what was found, why: failures first
 * @param unjudged groups without findings and why, a sentence, empty if none
 * @param wires one row a stated run
 * @param wiresNote how the wires' figures come about, a sentence
 * @param sizes drop and loss by size, one table a run
 * @param trackingNote what the controller's voltage costs, empty if nothing
 */
public record ElectricalPage(
    String summary,
    Table findings,
    String unjudged,
    Table wires,
    String wiresNote,
    List<Sizes> sizes,
    String trackingNote,
    List<Checklist.Item> checklist,
    String governs) {
  private static final String NO_FIGURE = "–";

  /** How one run would do with other sizes; the stated one is marked. */
  public record Sizes(String title, Table table) {}

  static ElectricalPage of(ElectricalCheck check, StudyResult result) {
    var sizes = new ArrayList<Sizes>();
    for (Run run : check.runs()) {
      sizes.add(sizes(run));
    }
    return new ElectricalPage(
        CheckText.counts(check.findings()) + ".",
        findings(check),
        unjudged(check),
        wires(check.runs()),
        wiresNote(check.runs()),
        sizes,
        trackingNote(result),
        Checklist.items(),
        LocalCode.GOVERNS);
  }

  private static Table findings(ElectricalCheck check) {
    var rows = new ArrayList<Row>();
    for (Severity severity : CheckText.WORST_FIRST) {
      for (Group group : check.groups()) {
        for (Finding f : group.findings()) {
          if (f.severity() == severity) {
            rows.add(
                new Row(
                    List.of(severity.word(), f.subject(), f.text(), f.reason()),
                    severity.isRefused()));
          }
        }
      }
    }
    return new Table(List.of("Verdict", "Looked at", "Found", "Why"), rows);
  }

  private static String unjudged(ElectricalCheck check) {
    var told = new ArrayList<String>();
    for (Group group : check.groups()) {
      if (group.findings().isEmpty()) {
        told.add(group.title() + ": " + group.ifEmpty() + ".");
      }
    }
    return String.join(" ", told);
  }

  private static Table wires(List<Run> runs) {
    var rows = new ArrayList<Row>();
    double lostWh = 0.0;
    for (Run run : runs) {
      SizeRow stated = run.judged().stated();
      lostWh += run.yearLossWh();
      rows.add(
          new Row(
              List.of(
                  run.judged().run().name() + ": " + ConductorsText.stated(run),
                  run.judged().verdict().word(),
                  Show.current(run.judged().load().ratedA()),
                  Show.number(stated.dropV(), 2) + " V, " + Show.percent(stated.dropShare()),
                  kwh(run, run.yearLossWh()),
                  share(run)),
              run.judged().verdict().isRefused()));
    }
    if (runs.size() > 1) {
      rows.add(
          new Row(
              List.of("All stated wires", "", "", "", Show.number(lostWh / 1000.0, 1), ""), false));
    }
    return new Table(
        List.of("Wire", "Verdict", "Rated current", "Drop", "Lost, kWh a year", "Of what passes"),
        rows);
  }

  private static String kwh(Run run, double wh) {
    return run.judged().load().isSimulated() ? Show.number(wh / 1000.0, 1) : NO_FIGURE;
  }

  private static String share(Run run) {
    double throughputWh = run.alike() * run.judged().load().throughputWh();
    return throughputWh > 0.0 ? Show.percent(run.yearLossWh() / throughputWh) : NO_FIGURE;
  }

  private static String wiresNote(List<Run> runs) {
    return runs.isEmpty()
        ? ""
        : "Lost in the simulated hours, as an average year; the books above hold the same. Each wire is"
            + " taken as warm as at its rated current, which overstates its loss a little. The panels' wires are"
            + " reckoned as if the bank took all of it: in hours in which it is full less flows and"
            + " less is lost.";
  }

  private static Sizes sizes(Run run) {
    var rows = new ArrayList<Row>();
    for (SizeRow size : run.judged().sizes()) {
      boolean isStated = size.size() == run.judged().run().size();
      rows.add(
          new Row(
              List.of(
                  size.size().label() + (isStated ? " (stated)" : ""),
                  Show.number(size.dropV(), 2),
                  Say.number(size.dropShare() * 100.0, 1),
                  Show.power(size.lossW()),
                  kwh(run, run.alike() * size.yearLossWh())),
              isStated));
    }
    return new Sizes(
        run.judged().run().name(),
        new Table(
            List.of("Size", "Drop, V", "Drop, %", "Heat at rated current", "Lost, kWh a year"),
            rows));
  }

  /** What was lost because the panels could not work at their best voltage. */
  private static String trackingNote(StudyResult result) {
    double years = Facts.calendar(result).years();
    double availableWh = result.outcome().total().solarAvailableWh();
    for (NamedHours loss : result.ledger().forcing().arrayLosses()) {
      double wh = 0.0;
      for (double hourWh : loss.wh()) {
        wh += hourWh;
      }
      if (wh > 0.0 && loss.name().equals("held_at_bank_voltage")) {
        return "This controller does not track: held at the bank's voltage the panels bring "
            + Say.kwh(availableWh / years)
            + " a year to it; at their best voltage, as a tracking controller works them, they would"
            + " bring "
            + Say.kwh((availableWh + wh) / years)
            + ", "
            + Show.percent(wh / availableWh)
            + " more.";
      }
      if (wh > 0.0 && loss.name().equals("outside_window")) {
        return "Outside the controller's tracking window "
            + Say.kwh(wh / years)
            + " a year are lost, "
            + Show.percent(wh / (availableWh + wh))
            + " of what the panels could bring to it.";
      }
    }
    return "";
  }
}
