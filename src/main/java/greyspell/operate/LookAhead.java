package greyspell.operate;

import greyspell.balance.Balance;
import greyspell.balance.Design;
import greyspell.balance.Forcing;
import greyspell.balance.Ledger;
import greyspell.scenario.Scenario;
import greyspell.study.Effect;
import greyspell.study.Trials;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Runs a variant of the home, which may differ in its loads and its generator, from the same charge
 * through each of the stretches. The panels bring what they bring in the home as it is run from
 * year to year, with the bank's own voltage where that matters.
 */
final class LookAhead {
  private static final double HOURS_PER_DAY = 24.0;

  private final Trials trials;
  private final List<Forcing> lived;
  private final List<Stretch> stretches;
  private final int hours;

  LookAhead(Trials trials, List<Forcing> lived, List<Stretch> stretches, int hours) {
    this.trials = trials;
    this.lived = lived;
    this.stretches = stretches;
    this.hours = hours;
  }

  /** What comes to the home as it is, part by part. */
  static List<Forcing> lived(Trials trials) {
    var all = new ArrayList<Forcing>();
    for (int part = 0; part < trials.parts(); part++) {
      all.add(trials.books(part, trials.home(), Set.of()).forcing());
    }
    return all;
  }

  /**
   * What the charge comes to.
   *
   * @param chargeWh above the reserve, now
   */
  Outlook of(Scenario variant, double chargeWh, boolean hasGenerator) {
    Set<Effect> leftOut = hasGenerator ? Set.of() : Set.of(Effect.GENERATOR);
    Scenario.Generator generator = variant.generator();
    var ahead =
        new Ahead(
            stretches.size(), hours, hasGenerator && generator != null ? generator.spec() : null);
    for (int part = 0; part < trials.parts(); part++) {
      Forcing forcing = forcing(part, variant);
      Design design = trials.design(part, variant, leftOut);
      Ledger books = Ledger.of(forcing, design);
      double startWh = Math.min(chargeWh, books.windowWh());
      for (Stretch stretch : stretches) {
        if (stretch.part() == part) {
          Balance.runFrom(forcing, design, startWh, books, stretch.fromHour(), hours);
          ahead.add(books, stretch.fromHour());
        }
      }
    }
    return ahead.outlook();
  }

  private Forcing forcing(int part, Scenario variant) {
    Forcing home = lived.get(part);
    if (variant.load().equals(trials.home().load())) {
      return home;
    }
    Forcing.Columns columns = trials.forcing(part, variant, Set.of()).columns();
    Forcing.Columns sun = home.columns();
    columns.solarAvailableWh = sun.solarAvailableWh;
    columns.clippedWh = sun.clippedWh;
    columns.controllerLossWh = sun.controllerLossWh;
    columns.solarBusWh = sun.solarBusWh;
    columns.arrayLosses = sun.arrayLosses;
    columns.controllerParts = sun.controllerParts;
    return new Forcing(home.calendar(), columns);
  }

  /** Of the full bank, what the cold keeps back as the stretches begin: their middle. */
  double lockedShare() {
    double[] share =
        stretches.stream()
            .mapToDouble(s -> lived.get(s.part()).lockedShare()[s.fromHour()])
            .sorted()
            .toArray();
    return share[share.length / 2];
  }

  /** What a variant asks for in a day, the mean of the stretches. */
  double askedDayWh(Scenario variant) {
    double sumWh = 0.0;
    for (int part = 0; part < trials.parts(); part++) {
      Forcing forcing = forcing(part, variant);
      for (Stretch stretch : stretches) {
        for (int k = 0; stretch.part() == part && k < hours; k++) {
          int h = (stretch.fromHour() + k) % forcing.hours();
          sumWh += forcing.acAskedWh()[h] + forcing.dcAskedWh()[h];
        }
      }
    }
    return sumWh / stretches.size() * HOURS_PER_DAY / hours;
  }
}
