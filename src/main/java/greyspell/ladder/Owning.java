package greyspell.ladder;

import greyspell.scenario.Scenario;
import greyspell.scenario.Scenario.Costs;
import greyspell.scenario.ScenarioEdit;
import greyspell.sizing.LifeCycleCost;
import greyspell.study.Study;
import greyspell.study.Trial;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** What a home costs over the years. */
final class Owning {
  private static final int MOST_YEARS = 60;

  private final @Nullable Path library;

  Owning(@Nullable Path library) {
    this.library = library;
  }

  /**
   * How long a bank lasts.
   *
   * @param years until it is replaced, null if it outlasts the years that were followed
   */
  record Life(@Nullable Double years) {}

  /** Follows the bank's ageing over the years, in the scenario's own weather. */
  Life life(ScenarioEdit text, int years) {
    Scenario home =
        text.set("bank.service_years", Integer.toString(Math.min(years, MOST_YEARS)))
            .scenario(library);
    return new Life(Study.run(home, (what, done) -> {}).besides().replacementYears());
  }

  /** Null where a price that matters is not stated. */
  static @Nullable LifeCycleCost cost(Trial trial, double onceCost, Life life) {
    Costs costs = trial.scenario().costs();
    Double perPack = costs.perPackCost(), fuel = costs.fuelPerLitreCost();
    Double hour = costs.perGeneratorHourCost(), upkeep = costs.yearlyCost(), years = life.years();
    if (perPack == null || (trial.fuelL() > 0.0 && fuel == null)) {
      return null;
    }
    return LifeCycleCost.of(
        onceCost,
        perPack * trial.scenario().bank().packs(),
        years == null ? Double.POSITIVE_INFINITY : Math.max(0.1, years),
        fuel == null ? 0.0 : trial.fuelL() * fuel,
        hour == null ? 0.0 : trial.generatorHours() * hour,
        upkeep == null ? 0.0 : upkeep,
        costs.years(),
        costs.discountFraction());
  }
}
