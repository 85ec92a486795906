package greyspell.study;

import greyspell.balance.Design;
import greyspell.balance.Forcing;
import greyspell.balance.Ledger;
import greyspell.load.LoadPlan;
import greyspell.load.LoadRange;
import greyspell.power.FuelUse;
import greyspell.power.PeakCheck;
import greyspell.scenario.Scenario;
import greyspell.storage.BankSpec;
import greyspell.storage.FullCharge;
import greyspell.storage.ServiceLife;
import greyspell.study.Besides.LoadAnswers;
import greyspell.study.Besides.ServiceYear;
import greyspell.weather.WeatherSeries;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Runs a home again with one thing changed at a time, for what stands beside its books. */
final class Again {
  private static final double STEP_W = 10.0;

  /** So many of the least certain loads are tried one at a time: each costs two runs. */
  private static final int MOST_TRIED = 3;

  private final Scenario scenario;
  private final HomeForcing home;
  private final Forcing forcing;
  private final Design design;
  private final Ledger ledger;

  Again(Scenario scenario, HomeForcing home, Forcing forcing, Design design, Ledger ledger) {
    this.scenario = scenario;
    this.home = home;
    this.forcing = forcing;
    this.design = design;
    this.ledger = ledger;
  }

  Besides besides(WeatherSeries weather) {
    var service = new ArrayList<ServiceYear>();
    int years = scenario.bank().life().serviceYears();
    Double replacement = years > 0 ? service(years, weather, service) : null;
    return new Besides(
        fuel(scenario, ledger),
        PeakCheck.of(scenario.inverter(), home.load().runningW(), home.load().peakW()),
        FullCharge.read(
            chargeShare(ledger, scenario.bank()),
            scenario.bank().fullFraction(),
            scenario.startChargeFraction() == null),
        service,
        replacement,
        loads(),
        tenWattsLess());
  }

  static @Nullable FuelUse fuel(Scenario scenario, Ledger ledger) {
    Scenario.Generator generator = scenario.generator();
    if (generator == null) {
      return null;
    }
    var wh = new double[ledger.hours()];
    var on = new double[ledger.hours()];
    for (int h = 0; h < wh.length; h++) {
      wh[h] = ledger.generatorWh(h);
      on[h] = ledger.isGeneratorOn(h) ? 1.0 : 0.0;
    }
    return FuelUse.of(generator.spec(), wh, on);
  }

  private static double[] chargeShare(Ledger ledger, BankSpec bank) {
    double[] chargeWh = ledger.chargeWh();
    var share = new double[chargeWh.length];
    for (int h = 0; h < share.length; h++) {
      share[h] = bank.chargeShare(chargeWh[h]);
    }
    return share;
  }

  private @Nullable Double service(int years, WeatherSeries weather, List<ServiceYear> toService) {
    return life(scenario, forcing, weather, years, toService).replacementYears();
  }

  /**
   * Follows a home's bank year by year, in the same weather each year.
   *
   * @param toService takes what each year comes to
   */
  static ServiceLife life(
      Scenario home,
      Forcing forcing,
      WeatherSeries weather,
      int years,
      List<ServiceYear> toService) {
    var hours =
        new ServiceLife.Hours() {
          @Override
          public double[] chargeShare(int number, BankSpec bank) {
            Scenario aged = home.withBank(bank);
            Design design = new HomeDesign(aged, Without.NOTHING).make(weather, new ArrayList<>());
            Ledger books = Laps.run(forcing, design, home.startChargeFraction()).ledger();
            toService.add(new ServiceYear(number, bank.healthShare(), Unmet.of(books)));
            return Again.chargeShare(books, bank);
          }

          @Override
          public double[] temperatureC(int number) {
            return forcing.bankTemperatureC();
          }
        };
    return ServiceLife.follow(home.bank(), years, hours);
  }

  private @Nullable LoadAnswers loads() {
    LoadPlan plan = scenario.load();
    var unsure = new ArrayList<Integer>();
    for (int load = 0; load < plan.loads(); load++) {
      if (spreadWh(load) > 0.0) {
        unsure.add(load);
      }
    }
    if (unsure.isEmpty()) {
      return null;
    }
    unsure.sort(Comparator.comparingDouble(this::spreadWh).reversed());
    Unmet likely = Unmet.of(ledger), narrowestLow = likely, narrowestHigh = likely;
    String narrowest = null;
    for (int load : unsure.subList(0, Math.min(MOST_TRIED, unsure.size()))) {
      LoadRange range = plan.range(load);
      Unmet low = asking(plan.withFactor(load, range.lowFactor()));
      Unmet high = asking(plan.withFactor(load, range.highFactor()));
      if (high.wh() - low.wh() > narrowestHigh.wh() - narrowestLow.wh()) {
        narrowest = plan.name(load);
        narrowestLow = low;
        narrowestHigh = high;
      }
    }
    return new LoadAnswers(
        asking(plan.low()), likely, asking(plan.high()), narrowest, narrowestLow, narrowestHigh);
  }

  /** How far apart the ends of a load's range lie, a year. */
  private double spreadWh(int load) {
    LoadRange range = scenario.load().range(load);
    return home.load().books().get(load).yearlyWh() * (range.highFactor() - range.lowFactor());
  }

  private Unmet asking(LoadPlan plan) {
    return unmet(home.asking(plan, forcing));
  }

  private Unmet tenWattsLess() {
    Forcing.Columns columns = forcing.columns();
    columns.standingWh = new double[forcing.hours()];
    for (int h = 0; h < columns.standingWh.length; h++) {
      columns.standingWh[h] = Math.max(0.0, forcing.standingWh()[h] - STEP_W);
    }
    return unmet(new Forcing(forcing.calendar(), columns));
  }

  private Unmet unmet(Forcing changed) {
    return Unmet.of(Laps.run(changed, design, scenario.startChargeFraction()).ledger());
  }
}
