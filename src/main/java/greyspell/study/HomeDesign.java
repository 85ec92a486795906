package greyspell.study;

import greyspell.balance.Design;
import greyspell.balance.Detail;
import greyspell.load.ApplianceSpec;
import greyspell.load.LoadPolicy;
import greyspell.load.Priority;
import greyspell.load.step.LoadRules;
import greyspell.power.GeneratorRules;
import greyspell.power.GeneratorRun;
import greyspell.power.GeneratorSpec;
import greyspell.power.InverterCurve;
import greyspell.power.step.GeneratorLimits;
import greyspell.power.step.InverterLimits;
import greyspell.scenario.Scenario;
import greyspell.storage.BankSpec;
import greyspell.storage.CellModel;
import greyspell.storage.step.BankDetail;
import greyspell.storage.step.BankLimits;
import greyspell.storage.step.CellStep;
import greyspell.weather.WeatherSeries;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A home's bank, inverter, generator and rules, as the hourly loop needs them. */
final class HomeDesign {
  private static final double NO_LIMIT_W = 1e12;

  private final Scenario home;
  private final Without without;

  HomeDesign(Scenario home, Without without) {
    this.home = home;
    this.without = without;
  }

  Design make(WeatherSeries weather, List<String> cautions) {
    return make(weather, new Kept(0), cautions);
  }

  /** The same, sooner where many designs stand in the same air. */
  Design make(HomeLight light, List<String> cautions) {
    return make(light.weather(), light.keptUnderAnySky(), cautions);
  }

  private Design make(WeatherSeries weather, Kept kept, List<String> cautions) {
    InverterCurve.Fit inverter = InverterCurve.fit(home.inverter());
    for (String caution : inverter.cautions()) {
      if (!cautions.contains(caution)) {
        cautions.add(caution);
      }
    }
    BankSpec bank = bank();
    return new Design(
        limits(bank),
        without(new Wires(home).before(inverter.limits())),
        new Detail(
            detail(bank), generator(weather, kept), rules(without.plan(home.load()).policy())));
  }

  /** The bank in the health in which it is run. */
  BankSpec bank() {
    return without.has(Effect.BANK_HEALTH) ? home.bank().withHealth(1.0) : home.bank();
  }

  private BankLimits limits(BankSpec bank) {
    BankLimits limits = bank.limits();
    boolean isLossless = without.has(Effect.CELL_LOSS), isFree = without.has(Effect.BANK_RATE);
    return new BankLimits(
        limits.windowWh(),
        isLossless ? 1.0 : limits.chargeEfficiency(),
        isLossless ? 1.0 : limits.dischargeEfficiency(),
        isFree ? NO_LIMIT_W : limits.mostInWh(),
        isFree ? NO_LIMIT_W : limits.mostOutWh(),
        without.has(Effect.SELF_DISCHARGE) ? 1.0 : limits.keptPerHourShare());
  }

  private @Nullable BankDetail detail(BankSpec bank) {
    if (!bank.isDetailed()) {
      return null;
    }
    CellStep cells = null;
    if (!without.has(Effect.VOLTAGE)) {
      cells = CellModel.step(bank, home.electrical().chargingV(), home.electrical().cutOffV());
      cells = without.has(Effect.CELL_LOSS) ? cells.withStated(1.0, 1.0) : cells;
    }
    return new BankDetail(
        bank.reserveWh(),
        bank.contentWh(),
        bank.nominalV(),
        cells,
        without.has(Effect.TWO_TANKS) ? null : CellModel.tanks(bank),
        without.has(Effect.ABSORPTION) ? null : CellModel.taper(bank));
  }

  private InverterLimits without(InverterLimits inverter) {
    boolean isLossless = without.has(Effect.INVERTER_LOSS);
    boolean isFree = without.has(Effect.INVERTER_LIMIT);
    double continuousW = isFree ? NO_LIMIT_W : inverter.continuousW();
    return new InverterLimits(
        continuousW,
        isLossless ? 0.0 : inverter.linearLossShare(),
        // the same loss at the same power
        isLossless ? 0.0 : inverter.quadraticLossShare() * (continuousW / inverter.continuousW()),
        isLossless || without.has(Effect.BUS_WIRING) ? 0.0 : inverter.wireLossSharePerW());
  }

  private @Nullable GeneratorLimits generator(WeatherSeries weather, Kept kept) {
    Scenario.Generator generator = home.generator();
    return generator == null || without.has(Effect.GENERATOR)
        ? null
        : kept.get(
            new GeneratorKey(generator.spec(), generator.rules()),
            () ->
                GeneratorRun.limits(
                    generator.spec(),
                    generator.rules(),
                    home.site().elevationM(),
                    weather.airTemperatureC(),
                    weather.calendar()));
  }

  private record GeneratorKey(GeneratorSpec spec, GeneratorRules rules) {}

  private LoadRules rules(LoadPolicy policy) {
    if (policy.isIdle()) {
      return LoadRules.NONE;
    }
    Integer longest = policy.longestWaitDays();
    return new LoadRules(
        orNever(policy.shedShouldRunBelowShare()),
        orNever(policy.shedCanWaitBelowShare()),
        orNever(policy.canWaitAboveShare()),
        longest == null ? 0 : longest, // nothing waits then
        mostWh(false),
        mostWh(true));
  }

  private static double orNever(@Nullable Double share) {
    return share == null ? 0.0 : share;
  }

  /** What all that can wait draws when it runs together. */
  private double mostWh(boolean isDirectCurrent) {
    double sumW = 0.0;
    for (ApplianceSpec appliance : home.load().appliances()) {
      if (appliance.priority() == Priority.CAN_WAIT
          && appliance.isDirectCurrent() == isDirectCurrent) {
        sumW += appliance.quantity() * appliance.powerW();
      }
    }
    return sumW;
  }
}
