package greyspell.ladder;

import greyspell.scenario.Scenario.Costs;
import greyspell.sizing.LifeCycleCost;
import greyspell.study.BankLife;
import greyspell.study.Trial;
import org.jspecify.annotations.Nullable;

/** What a home costs over the years. */
final class Owning {
  private Owning() {}

  /** Null where a price that matters is not stated. */
  static @Nullable LifeCycleCost cost(Trial trial, double onceCost, BankLife life) {
    Costs costs = trial.scenario().costs();
    Double perPack = costs.perPackCost(), fuel = costs.fuelPerLitreCost();
    Double hour = costs.perGeneratorHourCost(), upkeep = costs.yearlyCost();
    if (perPack == null || (trial.fuelL() > 0.0 && fuel == null)) {
      return null;
    }
    return LifeCycleCost.of(
        onceCost,
        perPack * trial.scenario().bank().packs(),
        orEver(life.leftYears()),
        orEver(life.newYears()),
        fuel == null ? 0.0 : trial.fuelL() * fuel,
        hour == null ? 0.0 : trial.generatorHours() * hour,
        upkeep == null ? 0.0 : upkeep,
        costs.years(),
        costs.discountFraction());
  }

  private static double orEver(@Nullable Double years) {
    return years == null ? Double.POSITIVE_INFINITY : years;
  }
}
