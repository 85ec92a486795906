package greyspell.report;

import greyspell.electrical.Arrangement;
import greyspell.electrical.Finding.Severity;
import greyspell.electrical.StringJudgement;
import greyspell.quantity.Show;
import greyspell.study.StringYears;
import greyspell.study.StringYears.Year;
import java.util.ArrayList;
import java.util.List;

/** What each arrangement brings in a year, in words for a terminal. */
final class StringYearsText {
  private static final double TOLD_WH = 500.0;

  private final StringJudgement judged;
  private final StringYears years;

  StringYearsText(StringJudgement judged, StringYears years) {
    this.judged = judged;
    this.years = years;
  }

  /** For the table. */
  String cell(int place) {
    Year year = years.at(place);
    return year == null ? "-" : kwh(year.outputWh());
  }

  /** What the column means, to stand behind the other columns' words. */
  String legend() {
    return "kWh a year: solar energy at the controller's output in an average year of the home's weather,"
        + " if the bank takes all of it"
        + (years.isAlone() ? "" : ", of this plane as if alone")
        + "; - where the cold exceeds a limit.";
  }

  /** The built strings against the best, and where the difference comes from. */
  void write(StringBuilder out) {
    int built = find(true);
    int best = find(false);
    int shown = built >= 0 ? built : best;
    if (shown < 0) {
      return;
    }
    Columns.wrap(out, "", own(shown, built >= 0) + against(shown, best) + wire());
    Year held = years.at(shown);
    Year tracked = years.ifTracked(shown);
    if (held != null && tracked != null) {
      Columns.wrap(out, "", tracking(held, tracked));
    }
  }

  private String own(int place, boolean isBuilt) {
    Arrangement a = judged.arrangements().get(place);
    Year year = years.at(place);
    String what = (isBuilt ? "As built, " : "The best, ") + a.words();
    if (year == null) {
      return what + ": no kWh a year, its cold voltage exceeds a limit.";
    }
    var lost = new ArrayList<String>();
    add(lost, year.outsideWindowWh(), " outside the tracking window");
    add(lost, year.heldWh(), " by being held at the bank's voltage");
    add(lost, year.cableHeatWh(), " as heat in the wire to the controller");
    add(lost, year.clippedWh(), " clipped above the controller's limits");
    add(lost, year.controllerLossWh(), " in the controller itself");
    return what
        + ": "
        + kwh(year.outputWh())
        + " kWh a year"
        + (lost.isEmpty() ? "." : "; lost are " + String.join(", ", lost) + ".");
  }

  /** Against the best, or, where these are the best, against the next that is allowed. */
  private String against(int shown, int best) {
    int other = shown == best ? next(best) : best;
    if (other < 0) {
      return best < 0 ? " No arrangement is allowed." : " No other arrangement is allowed.";
    }
    Year own = years.at(shown);
    Year its = years.at(other);
    if (own == null || its == null) {
      return its == null
          ? ""
          : " The best, "
              + judged.arrangements().get(other).words()
              + ", brings "
              + kwh(its.outputWh())
              + " kWh a year.";
    }
    Arrangement a = judged.arrangements().get(other);
    String name =
        (shown == best ? " These are the best strings; " : " The best strings, ")
            + a.words()
            + (shown == best ? " would bring " : ", bring ");
    double moreWh = its.outputWh() - own.outputWh();
    int modules = a.modules() - judged.arrangements().get(shown).modules();
    return name + difference(moreWh) + (modules == 0 ? from(own, its) : modules(modules)) + ".";
  }

  private static String difference(double moreWh) {
    return Math.abs(moreWh) < TOLD_WH
        ? "the same to within 1 kWh"
        : kwh(Math.abs(moreWh)) + (moreWh > 0.0 ? " kWh a year more" : " kWh a year less");
  }

  private static String modules(int more) {
    int count = Math.abs(more);
    return " with "
        + count
        + (count == 1 ? " module " : " modules ")
        + (more > 0 ? "more" : "fewer");
  }

  private static String from(Year own, Year its) {
    var parts = new ArrayList<String>();
    change(
        parts, its.outsideWindowWh() - own.outsideWindowWh(), "lost outside the tracking window");
    change(parts, its.heldWh() - own.heldWh(), "lost by being held at the bank's voltage");
    change(parts, its.cableHeatWh() - own.cableHeatWh(), "heat in the wire");
    change(parts, its.clippedWh() - own.clippedWh(), "clipped");
    change(parts, its.controllerLossWh() - own.controllerLossWh(), "lost in the controller");
    return parts.isEmpty() ? "" : " (" + String.join(", ", parts) + ")";
  }

  private String wire() {
    return years.isWireStated()
        ? ""
        : " The wire to the controller is not stated, so its heat, which falls with the square of the"
            + " current, does not tell the arrangements apart here.";
  }

  private static String tracking(Year held, Year tracked) {
    double moreWh = tracked.outputWh() - held.outputWh();
    return "This controller does not track. One that tracks at every voltage, with the same limits and"
        + " efficiency, would bring "
        + (held.outputWh() > 0.0
            ? difference(moreWh)
                + (Math.abs(moreWh) < TOLD_WH
                    ? ""
                    : ", " + Show.percent(Math.abs(moreWh) / held.outputWh()))
            : kwh(tracked.outputWh()) + " kWh a year instead of nothing")
        + ".";
  }

  private int find(boolean isBuilt) {
    List<Arrangement> all = judged.arrangements();
    for (int k = 0; k < all.size(); k++) {
      if (isBuilt ? years.isBuilt(all.get(k)) : judged.isBest(all.get(k))) {
        return k;
      }
    }
    return -1;
  }

  /** That brings most of the others that do not fail. */
  private int next(int best) {
    int next = -1;
    double mostWh = -1.0;
    for (int k = 0; k < judged.arrangements().size(); k++) {
      Year year = years.at(k);
      if (k != best
          && year != null
          && year.outputWh() > mostWh
          && judged.arrangements().get(k).verdict() != Severity.FAIL) {
        next = k;
        mostWh = year.outputWh();
      }
    }
    return next;
  }

  private static void add(List<String> lost, double wh, String where) {
    if (wh >= TOLD_WH) {
      lost.add(kwh(wh) + " kWh" + where);
    }
  }

  private static void change(List<String> parts, double moreWh, String what) {
    if (Math.abs(moreWh) >= TOLD_WH) {
      parts.add(kwh(Math.abs(moreWh)) + (moreWh > 0.0 ? " kWh more " : " kWh less ") + what);
    }
  }

  private static String kwh(double wh) {
    return Show.number(wh / 1000.0, 0);
  }
}
