package greyspell.operate;

import greyspell.balance.Balance;
import greyspell.balance.Design;
import greyspell.balance.Forcing;
import greyspell.balance.Ledger;
import greyspell.scenario.Scenario;
import greyspell.study.Effect;
import greyspell.study.Trials;
import java.util.List;
import java.util.Set;

/** Runs a variant of the home from the same charge through each of the stretches. */
final class LookAhead {
  private static final double HOURS_PER_DAY = 24.0;

  private final Trials trials;
  private final List<Stretch> stretches;
  private final int hours;

  LookAhead(Trials trials, List<Stretch> stretches, int hours) {
    this.trials = trials;
    this.stretches = stretches;
    this.hours = hours;
  }

  /**
   * What the charge comes to.
   *
   * @param chargeWh above the reserve, now
   */
  Outlook of(Scenario variant, double chargeWh, boolean hasGenerator) {
    Set<Effect> leftOut = hasGenerator ? Set.of() : Set.of(Effect.GENERATOR);
    var lastsH = new int[stretches.size()];
    int reached = 0, next = 0;
    double unmetWh = 0.0, engineH = 0.0, fuelL = 0.0;
    for (int part = 0; part < trials.parts(); part++) {
      Forcing forcing = trials.forcing(part, variant, leftOut);
      Design design = trials.design(part, variant, leftOut);
      Ledger books = Ledger.of(forcing, design);
      double startWh = Math.min(chargeWh, books.windowWh());
      for (Stretch stretch : stretches) {
        if (stretch.part() != part) {
          continue;
        }
        Balance.runFrom(forcing, design, startWh, books, stretch.fromHour(), hours);
        int lasts = hours;
        for (int k = hours - 1; k >= 0; k--) {
          int h = (stretch.fromHour() + k) % forcing.hours();
          lasts = books.isUnmet(h) ? k : lasts;
          unmetWh += books.unmetWh(h);
          if (hasGenerator && books.isFull() && books.isGeneratorOn(h)) {
            engineH++;
            fuelL += fuelL(variant, books.generatorWh(h));
          }
        }
        lastsH[next++] = lasts;
        reached += lasts < hours ? 1 : 0;
      }
    }
    int n = stretches.size();
    return new Outlook(
        hours, new Outlook.Hours(lastsH), reached, unmetWh / n, engineH / n, fuelL / n);
  }

  /** What a variant asks for in a day, the mean of the stretches. */
  double askedDayWh(Scenario variant) {
    double sumWh = 0.0;
    for (int part = 0; part < trials.parts(); part++) {
      Forcing forcing = trials.forcing(part, variant, Set.of());
      for (Stretch stretch : stretches) {
        for (int k = 0; stretch.part() == part && k < hours; k++) {
          int h = (stretch.fromHour() + k) % forcing.hours();
          sumWh += forcing.acAskedWh()[h] + forcing.dcAskedWh()[h];
        }
      }
    }
    return sumWh / stretches.size() * HOURS_PER_DAY / hours;
  }

  private static double fuelL(Scenario variant, double generatorWh) {
    Scenario.Generator generator = variant.generator();
    return generator == null ? 0.0 : generator.spec().fuelLPerH(generatorWh);
  }
}
