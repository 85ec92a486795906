package greyspell.report;

import greyspell.chart.Say;
import greyspell.operate.Outlook;
import greyspell.operate.Today;
import greyspell.operate.Today.Off;
import greyspell.quantity.Show;
import greyspell.scenario.Scenario.Costs;
import java.util.Locale;

/** The days ahead in words, for the terminal. */
public final class TodayText {
  private static final int FEW_YEARS = 10;

  private final Today today;
  private final StringBuilder out = new StringBuilder();

  private TodayText(Today today) {
    this.today = today;
  }

  public static String of(Today today) {
    var text = new TodayText(today);
    text.head();
    text.classes();
    text.offs();
    text.generator();
    text.foot();
    return text.out.toString();
  }

  private void head() {
    var at = today.at();
    out.append(today.home().name())
        .append(", ")
        .append(Show.day(at.toLocalDate()))
        .append(String.format(Locale.ROOT, ", %02d:00", at.getHour()))
        .append(": the bank at ")
        .append(Show.percent(today.chargeShare()))
        .append("\n\n");
    if (today.aboveReserveWh() <= 0.0) {
      Columns.wrap(
          out,
          "",
          "That is at or below the reserve, which begins at "
              + Show.percent(today.home().bank().chargeShare(0.0))
              + " of all that the bank holds: nothing is left but what the sun brings. Charge first.");
    } else {
      Columns.wrap(
          out, "", Say.kwh(today.aboveReserveWh()) + " lie above the reserve. " + chance());
    }
    out.append('\n');
  }

  private String chance() {
    Outlook all = today.all();
    return "With everything on the reserve is reached within "
        + Say.count(today.days(), "day", "days")
        + " in "
        + all.reached()
        + " of "
        + Say.count(all.stretches(), "stretch", "stretches")
        + " of weather ("
        + today.sky()
        + ") around this date in "
        + Say.count(today.years(), "year", "years")
        + ".";
  }

  private void classes() {
    out.append("Hours until the reserve is reached and something goes dark\n");
    var table = new Columns();
    table.row("1 in 10", "usual", "9 in 10", "what stays on");
    row(table, today.all(), "everything");
    row(table, today.withoutWaiting(), "all but what can wait");
    row(table, today.mustRun(), "only what must run");
    table.write(out, true);
    Columns.wrap(
        out,
        "  ",
        "\"1 in 10\": in one of ten such stretches it is reached sooner than that. A + means it was not reached in the "
            + today.days()
            + " days looked at.");
    out.append('\n');
  }

  private static void row(Columns table, Outlook o, String words) {
    table.row(lasts(o, 0.1), lasts(o, 0.5), lasts(o, 0.9), words);
  }

  private static String lasts(Outlook o, double share) {
    int h = o.lastsH().at(share);
    return h + (h < o.hours() ? " h" : " h+");
  }

  private void offs() {
    if (today.offs().isEmpty()) {
      return;
    }
    out.append("What switching off buys, one after another\n");
    for (Off off : today.offs()) {
      Columns.wrap(
          out,
          "  - ",
          off.name()
              + " off ("
              + Show.energy(off.dayWh())
              + " a day): the reserve is reached in "
              + off.with().reached()
              + " of "
              + off.with().stretches()
              + when(off.with())
              + "."
              + Freeze.warning(off.name()));
    }
    out.append('\n');
  }

  /** Nothing where fewer than one in ten reach it. */
  private static String when(Outlook o) {
    if (o.lastsH().at(0.5) < o.hours()) {
      return ", usually after " + lasts(o, 0.5);
    }
    return o.lastsH().at(0.1) < o.hours() ? ", in one of ten within " + lasts(o, 0.1) : "";
  }

  private void generator() {
    Today.Engine engine = today.generator();
    if (engine == null) {
      out.append("No generator stands in the scenario.\n\n");
      return;
    }
    out.append("Generator\n");
    Integer runH = engine.runH();
    if (runH == null) {
      Columns.wrap(
          out,
          "  ",
          "Even a day of running now would not carry the house through: it has to run again, and loads off.");
    } else if (runH == 0) {
      Columns.wrap(
          out,
          "  ",
          "It need not run now: in nine of ten such stretches the charge lasts without it.");
    } else {
      Columns.wrap(
          out,
          "  ",
          "Run it "
              + Say.hours(runH)
              + (engine.mayNow() ? "" : " as soon as its permitted hours allow")
              + " (about "
              + Show.number(engine.runFuelL(), 1)
              + " litres"
              + cost(engine.runFuelL())
              + "): then the reserve is reached in "
              + engine.after().reached()
              + " of "
              + engine.after().stretches()
              + ". Counted as if it ran now.");
    }
    Columns.wrap(
        out,
        "  ",
        "Left to the rule of the scenario it would run "
            + Show.number(engine.byRule().engineH(), 1)
            + " hours in these "
            + today.days()
            + " days on "
            + Show.number(engine.byRule().fuelL(), 1)
            + " litres, a mean of the stretches. Outdoors only, at least 6 m from every opening, with a carbon monoxide alarm inside.");
    out.append('\n');
  }

  private String cost(double litresL) {
    Costs costs = today.home().costs();
    Double price = costs.fuelPerLitreCost();
    return price == null ? "" : ", " + Show.money(costs.currency(), price * litresL);
  }

  private void foot() {
    Columns.wrap(
        out,
        "",
        "No forecast: the weather of other years at this time of year."
            + (today.years() < FEW_YEARS
                ? " So few years say little of what is rare; --winters 30 draws more."
                : "")
            + " A monitor's charge may be 10 points wrong after weeks without a full charge.");
    if (today.home().load().appliances().stream().anyMatch(a -> a.isMedical())) {
      Columns.wrap(
          out,
          "",
          "A load here is medical: whatever stands above, keep an independent backup ready for it.");
    }
  }
}
