package greyspell.report;

import greyspell.chart.Say;
import greyspell.operate.EnginePlan;
import greyspell.operate.Outlook;
import greyspell.operate.Today;
import greyspell.operate.Today.Off;
import greyspell.quantity.Show;
import greyspell.scenario.Scenario.Costs;
import greyspell.storage.BankSpec;
import java.util.Locale;

/** The days ahead in words, for the terminal. */
public final class TodayText {
  private static final int FEW_YEARS = 10;
  private static final double LITTLE_WH = 50.0;
  private static final double LEAST_OVERLOAD_H = 0.5;

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
    Columns.wrap(out, "", charge() + " " + chance());
    out.append('\n');
  }

  private String charge() {
    double aboveWh = today.aboveReserveWh(), coldWh = today.heldByColdWh();
    String reserve =
        "the reserve, which begins at " + Show.percent(today.home().bank().monitorShare(0.0));
    if (aboveWh <= 0.0) {
      return "That is at or below "
          + reserve
          + ": nothing is left but what the sun brings. Charge first.";
    }
    String above = Say.kwh(aboveWh) + " lie above " + reserve + ".";
    if (aboveWh - coldWh < LITTLE_WH) {
      return above
          + " All of it is held back by the cold of these days: nothing is left but what the sun brings. Charge first.";
    }
    return coldWh < LITTLE_WH
        ? above
        : above
            + " Of that the cold of these days holds back "
            + Say.kwh(coldWh)
            + ", so "
            + Say.kwh(aboveWh - coldWh)
            + " can be drawn.";
  }

  private String chance() {
    Outlook all = today.all();
    return "With everything on the bank has no more to give within "
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
    out.append("Hours until the bank has no more to give and something goes dark\n");
    var table = new Columns();
    table.row("1 in 10", "usual", "9 in 10", "what stays on");
    row(table, today.all(), "everything");
    row(table, today.withoutWaiting(), "all but what can wait");
    row(table, today.mustRun(), "only what must run");
    table.write(out, true);
    Columns.wrap(
        out,
        "  ",
        "\"1 in 10\": in one of ten such stretches it comes sooner than that. A + means it did not come in the "
            + Say.count(today.days(), "day", "days")
            + " looked at."
            + (today.home().load().policy().isIdle()
                ? ""
                : " What the scenario's own rules let go when charge is low is let go here too, and counts as no outage."));
    if (today.all().overloadH() >= LEAST_OVERLOAD_H) {
      Columns.wrap(
          out,
          "  ",
          "Beside that, for "
              + Show.number(today.all().overloadH(), 1)
              + " hours of these days more is asked for at once than inverter or bank can give at any charge.");
    }
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
    if (today.all().reached() == 0) {
      out.append("Nothing need be switched off: the charge lasts in all of them.\n\n");
      return;
    }
    if (today.offs().isEmpty()) {
      out.append("Nothing could be switched off that is worth a word and need not run.\n\n");
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
              + " a day): dark in "
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
  private String when(Outlook o) {
    if (o.lastsH().at(0.5) == 0) {
      return ", usually at once; "
          + Say.kwhNumber(o.unmetWh())
          + " instead of "
          + Say.kwh(today.all().unmetWh())
          + " unserved, a mean";
    }
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
    EnginePlan plan = engine.plan();
    Columns.wrap(
        out,
        "  ",
        plan == null
            ? "It need not run: in nine of ten such stretches the charge lasts without it."
            : plan(plan, engine.mayNow()));
    Columns.wrap(
        out,
        "  ",
        "By the rule of the scenario as it stands: "
            + runs(engine.byRule())
            + ", and dark in "
            + engine.byRule().reached()
            + ". It runs outdoors only, at least 6 m from every opening, with a carbon monoxide alarm inside.");
    out.append('\n');
  }

  private String plan(EnginePlan plan, boolean mayNow) {
    BankSpec bank = today.home().bank();
    double startWh = plan.startBelowShare() * bank.usableWh();
    double stopWh = plan.stopAboveShare() * bank.usableWh();
    Outlook with = plan.with();
    boolean isNow = today.aboveReserveWh() < startWh;
    String words =
        (isNow
                ? mayNow
                    ? "Start it now, and again when the monitor falls to "
                    : "Start it as soon as its hours come (not now), and again when the monitor falls to "
                : "Start it when the monitor falls to ")
            + Show.percent(bank.monitorShare(startWh))
            + ", and let it run until it shows "
            + Show.percent(bank.monitorShare(stopWh))
            + " or its hours end. "
            + first(with, isNow && mayNow)
            + "In all: "
            + runs(with)
            + ", and dark in "
            + with.reached()
            + " of "
            + with.stretches()
            + " instead of "
            + today.all().reached()
            + ".";
    return plan.isEnough()
        ? words
        : words
            + " No other pair of charges does better in the hours that it may run: to be dark in at most one of ten, loads have to go as well.";
  }

  private static String first(Outlook with, boolean isNow) {
    Outlook.Runs runs = with.engine();
    if (runs.firstRunH().count() == 0) {
      return "";
    }
    int usual = runs.fromH().at(0.5);
    return "The first run "
        + (isNow
            ? ""
            : usual < with.hours()
                ? "usually begins in " + Say.hours(usual) + " and "
                : "is usually not needed in these days, else ")
        + "takes about "
        + Say.hours(runs.firstRunH().at(0.5))
        + ". ";
  }

  private String runs(Outlook o) {
    Outlook.Runs runs = o.engine();
    return Show.number(runs.engineH(), 1)
        + " hours in these "
        + Say.count(today.days(), "day", "days")
        + ", "
        + Show.number(runs.startsPerDay() * today.days(), 1)
        + " starts, "
        + Show.number(runs.fuelL(), 1)
        + " litres"
        + cost(runs.fuelL())
        + " (a mean of the stretches)";
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
