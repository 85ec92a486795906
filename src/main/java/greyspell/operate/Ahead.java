package greyspell.operate;

import greyspell.balance.Ledger;
import greyspell.power.GeneratorSpec;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** Gathers the outlook, stretch by stretch. */
final class Ahead {
  private static final double HOURS_PER_DAY = 24.0;

  private final int hours;
  private final @Nullable GeneratorSpec spec;
  private final int[] lastsH;
  private final int[] fromH;
  private final int[] firstRunH;
  private int stretches, reached, stretchesWithRun, overloadHours;
  private double unmetWh, engineH, starts, fuelL;

  /**
   * For so many stretches.
   *
   * @param spec null where no generator may run
   */
  Ahead(int stretches, int hours, @Nullable GeneratorSpec spec) {
    this.hours = hours;
    this.spec = spec;
    lastsH = new int[stretches];
    fromH = new int[stretches];
    firstRunH = new int[stretches];
  }

  /** The books of one stretch. */
  void add(Ledger books, int fromHour) {
    int lasts = hours, from = hours, firstRun = 0;
    boolean isOn = false;
    for (int k = 0; k < hours; k++) {
      int h = (fromHour + k) % books.hours();
      boolean isOut = books.isOutOfCharge(h);
      lasts = isOut && lasts == hours ? k : lasts;
      unmetWh += books.unmetWh(h);
      overloadHours += books.isUnmet(h) && !isOut ? 1 : 0;
      boolean runs = books.isGeneratorOn(h);
      if (spec != null && runs) {
        starts += isOn ? 0 : 1;
        from = Math.min(from, k);
        firstRun += from + firstRun == k ? 1 : 0;
        engineH++;
        fuelL += spec.fuelLPerH(books.generatorWh(h));
      }
      isOn = runs;
    }
    lastsH[stretches] = lasts;
    fromH[stretches++] = from;
    reached += lasts < hours ? 1 : 0;
    if (firstRun > 0) {
      firstRunH[stretchesWithRun++] = firstRun;
    }
  }

  Outlook outlook() {
    double n = stretches;
    var runs =
        new Outlook.Runs(
            engineH / n,
            fuelL / n,
            starts / n / hours * HOURS_PER_DAY,
            new Outlook.Hours(fromH),
            new Outlook.Hours(Arrays.copyOf(firstRunH, stretchesWithRun)));
    return new Outlook(
        hours, new Outlook.Hours(lastsH), reached, unmetWh / n, overloadHours / n, runs);
  }
}
