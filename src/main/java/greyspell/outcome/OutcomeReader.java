package greyspell.outcome;

import greyspell.balance.BusNeed;
import greyspell.balance.Design;
import greyspell.balance.Ledger;
import greyspell.calendar.HourCalendar;
import greyspell.outcome.Outcome.MonthBooks;
import greyspell.outcome.Outcome.WinterBooks;
import java.util.ArrayList;
import java.util.List;

/** Reads everything that is told of a run off its ledger. */
public final class OutcomeReader {
  private OutcomeReader() {}

  /**
   * The outcome of a finished run.
   *
   * @param isNorthern decides where winters are cut
   */
  public static Outcome read(Ledger ledger, Design design, boolean isNorthern) {
    HourCalendar calendar = ledger.forcing().calendar();
    var figures = new FiguresReader(ledger);
    var winters = new ArrayList<WinterBooks>();
    for (var winter : calendar.winters(isNorthern)) {
      winters.add(new WinterBooks(winter, figures.of(winter.fromHour(), winter.toHour())));
    }
    double[] needWh = BusNeed.wh(ledger.forcing(), design.inverter());
    return new Outcome(
        figures.of(0, ledger.hours()),
        List.copyOf(winters),
        months(calendar, figures),
        shortfalls(ledger),
        GreySpells.ranked(ledger, needWh),
        AutonomyReader.read(ledger.forcing(), needWh, design),
        design.bank().windowWh());
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
      double nowWh = h < ledger.hours() ? ledger.unmetWh(h) : 0.0;
      if (nowWh > 0.0) {
        from = from < 0 ? h : from;
        unmetWh += nowWh;
      } else if (from >= 0) {
        found.add(new Shortfall(from, h - from, unmetWh));
        from = -1;
        unmetWh = 0.0;
      }
    }
    return List.copyOf(found);
  }
}
