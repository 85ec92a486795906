package greyspell.outcome;

import greyspell.balance.Design;
import greyspell.balance.Forcing;
import greyspell.balance.HourLoop;
import greyspell.balance.Houses;
import greyspell.balance.Ledger;
import greyspell.calendar.HourCalendar;
import greyspell.outcome.WinterBook.Kind;
import greyspell.storage.step.BankLimits;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/**
 * A small house through invented winters for tests of books, words and pictures: sun that is weak
 * in December and comes in grey and bright days that hang together. Begun full at the seam.
 */
public final class SomeWinters {
  public static final int SEAM = 181 * 24;
  private static final int HOURS = 8760;
  private static final int DAYS = 365;

  private SomeWinters() {}

  /** So many made winters of a house with a bank of this many usable Wh. */
  public static WinterBook book(int winters, double windowWh) {
    return book(winters, windowWh, Kind.MADE);
  }

  public static WinterBook book(int winters, double windowWh, Kind kind) {
    Design design = design(windowWh);
    var reader = new WinterReader(design, SEAM);
    var records = new ArrayList<WinterRecord>();
    for (int w = 0; w < winters; w++) {
      Ledger ledger = run(forcing(w), design);
      records.add(reader.read(ledger, w, name(w, kind)));
    }
    return new WinterBook(
        kind,
        kind == Kind.MADE
            ? "made from monthly means, seed 7"
            : winters + " whole winters of a file",
        List.of("the differences between years are added by rule"),
        windowWh,
        true,
        records);
  }

  private static String name(int w, Kind kind) {
    int year = 2001 + w;
    String next = Integer.toString((year + 1) % 100 + 100).substring(1);
    return kind == Kind.MADE ? "winter " + (w + 1) : year + "/" + next;
  }

  public static Design design(double windowWh) {
    return new Design(
        new BankLimits(windowWh, 0.96, 0.96, 4000.0, 5000.0, 1.0), Houses.perfectInverter());
  }

  /** In the order of time: the hours from the seam on first, then those before it. */
  static Ledger run(Forcing ring, Design design) {
    var ledger = new Ledger(ring, design.bank().windowWh());
    // round and round: the second lap begins as the first one ends
    double endWh = HourLoop.run(ring, design, design.bank().windowWh(), ledger);
    HourLoop.run(ring, design, endWh, ledger);
    return ledger;
  }

  static Forcing forcing(int winter) {
    var random = new Random(1000L + winter);
    var solarWh = new double[HOURS];
    var loadWh = new double[HOURS];
    double memory = 0.0, dull = 0.12 * random.nextGaussian();
    for (int i = 0; i < DAYS; i++) {
      int day = (SEAM / 24 + i) % DAYS;
      memory = 0.6 * memory + 0.8 * random.nextGaussian();
      double season = 0.5 - 0.5 * Math.cos(2.0 * Math.PI * (day + 10) / DAYS);
      double clear = 1.0 / (1.0 + Math.exp(-1.4 * memory - dull * 4.0));
      double dayWh = (1400.0 + 11_000.0 * season) * (0.12 + 0.88 * clear);
      for (int h = 9; h < 16; h++) {
        solarWh[day * 24 + h] = dayWh / 7.0;
      }
    }
    Arrays.fill(loadWh, 35.0);
    for (int h = 0; h < HOURS; h++) {
      loadWh[h] += h % 24 >= 17 && h % 24 < 22 ? 60.0 : 0.0;
    }
    Forcing.Columns columns = Houses.plain(solarWh, loadWh).columns();
    return new Forcing(HourCalendar.typicalYear(), columns);
  }
}
