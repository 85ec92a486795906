package greyspell.report;

import greyspell.electrical.Arrangement;
import greyspell.electrical.ColdTable;
import greyspell.electrical.Finding;
import greyspell.electrical.Finding.Severity;
import greyspell.electrical.LocalCode;
import greyspell.electrical.StringJudgement;
import greyspell.quantity.Show;
import greyspell.quantity.Unit;
import greyspell.study.StringStudy;
import greyspell.study.StringYears;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Which strings a controller accepts, for a terminal. */
public final class StringsText {
  private StringsText() {}

  /** With what each arrangement brings in a year, or why that is not known. */
  public static String of(StringJudgement judged, StringStudy.Energy known) {
    StringYears years = known.years();
    StringYearsText energy = years == null ? null : new StringYearsText(judged, years);
    var out = new StringBuilder();
    Columns.wrap(
        out,
        "",
        judged.module().name() + " on " + controllers(judged) + ", wired in equal strings");
    if (!judged.isJudged()) {
      out.append('\n');
      judged.missing().forEach(what -> Columns.wrap(out, "  ! ", what));
      return out.append('\n').append(governs()).toString();
    }
    Double low = judged.rules().recordLowC();
    Double high = judged.rules().recordHighC();
    Columns.wrap(
        out,
        "",
        "Record low "
            + bothDegrees(low == null ? Double.NaN : low)
            + ", record high "
            + bothDegrees(high == null ? Double.NaN : high)
            + "; bank "
            + Show.voltage(judged.rules().bankV())
            + ", charged at up to "
            + Show.voltage(judged.rules().chargingV()));
    out.append('\n');
    table(judged, energy).write(out, true);
    out.append('\n');
    Columns.wrap(
        out,
        "  ",
        "cold: open circuit at the record low by the maker's coefficient; table: the same by "
            + ColdTable.SOURCE
            + (hasTable(judged) ? "" : ", which ends at -40 °C, hence \"-\"")
            + "; hot: operating voltage in full sun at the record high; needs: what it must stay"
            + " above; Isc: short-circuit current × 1.25. Voltages in V, currents in A"
            + (judged.controller().count() > 1 ? ", for one controller. " : ". ")
            + (energy == null ? known.whyNot() : energy.legend()));
    out.append('\n');
    Arrangement best = judged.best();
    Columns.wrap(
        out, "", (best == null ? "" : "Best: " + best.words() + ". ").concat(judged.why()));
    if (energy != null) {
      energy.write(out);
    }
    for (Arrangement a : judged.arrangements()) {
      out.append('\n');
      Columns.wrap(out, "", a.words() + " (" + Show.power(a.ratedPowerW()) + "): " + verdict(a));
      if (a.verdict() == Severity.FAIL) {
        fails(out, a.findings());
      } else {
        findings(out, worth(a));
      }
    }
    out.append('\n');
    judged.notes().forEach(note -> Columns.wrap(out, "", note));
    return out.append('\n').append(governs()).toString();
  }

  /** What goes before everything: where the record temperatures come from. */
  public static String notes(List<Finding> findings) {
    var out = new StringBuilder();
    findings(out, findings);
    return findings.isEmpty() ? "" : out.append('\n').toString();
  }

  /** What goes before the text of one plane of several. */
  public static String plane(String name, int planes) {
    var out = new StringBuilder();
    Columns.wrap(
        out,
        "",
        "Plane \""
            + name
            + "\", one of "
            + planes
            + ", judged as if it were alone on the controller; what all of them bring to it together"
            + " is judged by: greyspell check");
    return out.append('\n').toString();
  }

  private static String controllers(StringJudgement judged) {
    int count = judged.controller().count();
    return (count == 1 ? "" : count + " × ") + judged.controller().name();
  }

  /** Rated power, which follows from the numbers of modules, makes room for the energy. */
  private static Columns table(StringJudgement judged, @Nullable StringYearsText energy) {
    var table = new Columns();
    table.row(
        "series",
        "strings",
        "cold",
        "table",
        "limit",
        "room",
        "hot",
        "needs",
        "Isc",
        energy == null ? "array" : "kWh a year",
        "verdict");
    for (int k = 0; k < judged.arrangements().size(); k++) {
      Arrangement a = judged.arrangements().get(k);
      Double tableV = a.coldOpenTableV();
      Double limitV = a.limitV();
      Double marginShare = a.marginShare();
      table.row(
          Integer.toString(a.inSeries()),
          Integer.toString(a.inParallel()),
          Show.number(a.coldOpenV(), 1),
          tableV == null ? "-" : Show.number(tableV, 1),
          limitV == null ? "-" : Show.trimmed(limitV, 1),
          marginShare == null ? "-" : Show.percent(marginShare),
          Show.number(a.hotPowerV(), 1),
          Show.number(a.neededV(), 1),
          Show.number(a.circuitA(), 1),
          energy == null ? Show.power(a.ratedPowerW()) : energy.cell(k),
          a.verdict().word() + (judged.isBest(a) ? ", best" : ""));
    }
    return table;
  }

  private static boolean hasTable(StringJudgement judged) {
    return judged.arrangements().stream().allMatch(a -> a.coldOpenTableV() != null);
  }

  private static String verdict(Arrangement a) {
    int cautions = Finding.count(a.findings(), Severity.CAUTION);
    int fails = Finding.count(a.findings(), Severity.FAIL);
    if (fails > 0) {
      return "fail";
    }
    if (a.verdict() == Severity.UNKNOWN) {
      return "not judged, so not allowed";
    }
    return cautions == 0 ? "pass" : count(cautions);
  }

  private static String count(int cautions) {
    return cautions == 1 ? "one caution" : cautions + " cautions";
  }

  /** What failed and what needs care; of a clean arrangement the voltages. */
  private static List<Finding> worth(Arrangement a) {
    return a.findings().stream()
        .filter(f -> f.severity() != Severity.PASS || a.verdict() == Severity.PASS)
        .toList();
  }

  /** Why it is not allowed, in numbers; what else there is to say no longer matters. */
  private static void fails(StringBuilder out, List<Finding> findings) {
    for (Finding f : findings) {
      if (f.severity() == Severity.FAIL) {
        Columns.wrap(out, "  " + sign(f.severity()) + " ", f.subject() + ": " + f.text());
      }
    }
  }

  /** A line or two for each finding, the sign first. */
  static void findings(StringBuilder out, List<Finding> findings) {
    for (Finding f : findings) {
      Columns.wrap(
          out, "  " + sign(f.severity()) + " ", f.subject() + ": " + f.text() + " - " + f.reason());
    }
  }

  private static String sign(Severity severity) {
    return switch (severity) {
      case PASS -> "ok     ";
      case CAUTION -> "CAUTION";
      case UNKNOWN -> "UNKNOWN";
      case FAIL -> "FAIL   ";
    };
  }

  static String governs() {
    var out = new StringBuilder();
    Columns.wrap(out, "", LocalCode.GOVERNS);
    return out.toString();
  }

  private static String bothDegrees(double temperatureC) {
    return Show.temperature(temperatureC) + " (" + Unit.FAHRENHEIT.text(temperatureC) + ")";
  }
}
