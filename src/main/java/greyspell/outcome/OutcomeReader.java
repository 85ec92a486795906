package greyspell.outcome;

import greyspell.balance.BusNeed;
import greyspell.balance.Design;
import greyspell.balance.Forcing;
import greyspell.balance.Ledger;
import greyspell.calendar.HourCalendar;
import greyspell.calendar.Monthly;
import greyspell.outcome.Outcome.MonthBooks;
import greyspell.outcome.Outcome.WinterBooks;
import java.util.ArrayList;
import java.util.List;

/** Reads everything that is told of a run off its ledger. */
public final class OutcomeReader {
  private static final double SAME_CHARGE_WH = 0.01;

  private OutcomeReader() {}

  /**
   * The outcome of a finished run.
   *
   * @param isNorthern decides where winters are cut
   */
  public static Outcome read(Ledger ledger, Design design, boolean isNorthern) {
    HourCalendar calendar = ledger.forcing().calendar();
    var figures = new FiguresReader(ledger);
    double[] needWh = BusNeed.wh(ledger.forcing(), design.inverter());
    return new Outcome(
        figures.of(0, ledger.hours()),
        winters(ledger, isNorthern),
        months(calendar, figures),
        shortfalls(ledger),
        GreySpells.ranked(ledger, needWh),
        AutonomyReader.read(ledger.forcing(), needWh, design),
        design.bank().windowWh());
  }

  /**
   * Days that a full bank lasts with no sun, at the mean need of each month: of {@link
   * Autonomy#darkDays}.
   */
  public static Monthly darkDays(Forcing forcing, Design design) {
    return AutonomyReader.darkDays(forcing, BusNeed.wh(forcing, design.inverter()), design.bank());
  }

  /**
   * Grey spells from what the panels bring too little each day, most energy short first.
   *
   * @param dayLackWh need less sun on the bus; below 0 if more than enough
   * @param isRing one year that is run round and round
   */
  public static List<GreySpell> greySpells(double[] dayLackWh, boolean isRing) {
    return GreySpells.ranked(dayLackWh, isRing);
  }

  /** The books of each winter alone, half winters at the ends included and marked. */
  public static List<WinterBooks> winters(Ledger ledger, boolean isNorthern) {
    var figures = new FiguresReader(ledger);
    var winters = new ArrayList<WinterBooks>();
    for (var winter : ledger.forcing().calendar().winters(isNorthern)) {
      winters.add(new WinterBooks(winter, figures.of(winter.fromHour(), winter.toHour())));
    }
    return List.copyOf(winters);
  }

  private static List<MonthBooks> months(HourCalendar calendar, FiguresReader figures) {
    var months = new ArrayList<MonthBooks>();
    int from = 0;
    for (int h = 24; h <= calendar.hours(); h += 24) {
      if (h == calendar.hours() || calendar.month(h) != calendar.month(from)) {
        months.add(new MonthBooks(calendar.year(from), calendar.month(from), figures.of(from, h)));
        from = h;
      }
    }
    return List.copyOf(months);
  }

  private static List<Shortfall> shortfalls(Ledger ledger) {
    var found = new ArrayList<Shortfall>();
    int from = -1;
    double unmetWh = 0.0;
    for (int h = 0; h <= ledger.hours(); h++) {
      if (h < ledger.hours() && ledger.isUnmet(h)) {
        from = from < 0 ? h : from;
        unmetWh += ledger.unmetWh(h);
      } else if (from >= 0) {
        found.add(new Shortfall(from, h - from, unmetWh));
        from = -1;
        unmetWh = 0.0;
      }
    }
    if (isRing(ledger)) {
      joinEnds(found, ledger.hours());
    }
    return List.copyOf(found);
  }

  /** One year that starts as it ends: what runs over its end goes on at its beginning. */
  private static boolean isRing(Ledger ledger) {
    double endWh = ledger.chargeWh()[ledger.hours() - 1];
    return ledger.forcing().calendar().years() == 1
        && Math.abs(ledger.startChargeWh() - endWh) <= SAME_CHARGE_WH;
  }

  private static void joinEnds(List<Shortfall> found, int hours) {
    if (found.size() < 2) {
      return;
    }
    Shortfall first = found.get(0), last = found.get(found.size() - 1);
    if (first.fromHour() == 0 && last.fromHour() + last.hours() == hours) {
      found.set(
          found.size() - 1,
          new Shortfall(
              last.fromHour(), last.hours() + first.hours(), last.unmetWh() + first.unmetWh()));
      found.remove(0);
    }
  }
}
