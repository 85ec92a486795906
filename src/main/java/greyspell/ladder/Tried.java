package greyspell.ladder;

import greyspell.scenario.Scenario.Costs;
import greyspell.sizing.LifeCycleCost;
import greyspell.study.Trial;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A step that was run: the home before it and after it.
 *
 * <p>What the sun did not bring is what goes unserved and what an engine gives in its place; a step
 * avoids some of both. A generator avoids only what goes unserved: its own energy is not counted
 * against it, its fuel and wear are counted as money.
 *
 * @param wires stated wires that could not bear it, empty if none
 */
public record Tried(Step step, Trial before, Trial after, String wires) {
  private static final String FUEL = "costs.fuel_per_litre";
  private static final double LEAST_WH = 100.0, MORE_HOURS = 0.5;

  /** Avoided in an average year. */
  public double avoidedWh() {
    return shortWh(before) - (isGenerator() ? after.unmet().wh() : shortWh(after));
  }

  /** Avoided in each whole winter, in the order of the weather. */
  public double[] avoidedByWinterWh() {
    var avoidedWh = new double[before.winters().size()];
    for (int w = 0; w < avoidedWh.length; w++) {
      var was = before.winters().get(w).figures();
      var is = after.winters().get(w).figures();
      avoidedWh[w] = was.unmetWh() - is.unmetWh();
      avoidedWh[w] += isGenerator() ? 0.0 : was.beyond().generatorWh() - is.beyond().generatorWh();
    }
    return avoidedWh;
  }

  private boolean isGenerator() {
    return step.kind() == Step.Kind.GENERATOR;
  }

  /** Unserved, or given by an engine. */
  static double shortWh(Trial trial) {
    return trial.unmet().wh() + trial.unmet().generatorWh();
  }

  /** Whether it avoids less than a tenth of a kWh a year, or buys that with more dark hours. */
  public boolean isIdle() {
    return avoidedWh() < LEAST_WH || avoidedUnmetHours() < -MORE_HOURS;
  }

  public double avoidedUnmetHours() {
    return before.unmet().unmetHours() - after.unmet().unmetHours();
  }

  /**
   * What it costs a year: its price spread over its life, and for a generator what it burns and
   * wears. Null where a price is missing.
   */
  public @Nullable Double yearlyCost(Costs costs) {
    double sumCost = wearCost(costs);
    for (Step.Price price : prices(costs)) {
      if (price.cost() == null) {
        return null;
      }
      sumCost += price.cost() * yearlyOf(price, costs);
    }
    return sumCost;
  }

  /** All prices that bear on it: of its parts, and for a generator of its fuel. */
  List<Step.Price> prices(Costs costs) {
    if (!isGenerator()) {
      return step.prices();
    }
    var all = new ArrayList<>(step.prices());
    all.add(new Step.Price(FUEL, "a litre of fuel", 0, costs.fuelPerLitreCost()));
    return all;
  }

  /** A year's money for each unit of money of a price. */
  double yearlyOf(Step.Price price, Costs costs) {
    if (price.key().equals(FUEL)) {
      return after.fuelL();
    }
    double lifeYears = step.lifeYears() == null ? costs.years() : step.lifeYears();
    return LifeCycleCost.yearly(
        price.count(), Math.min(lifeYears, costs.years()), costs.discountFraction());
  }

  /** Of a generator's hours in a year; 0 where none is bought or no price is stated. */
  double wearCost(Costs costs) {
    Double hour = costs.perGeneratorHourCost();
    return !isGenerator() || hour == null ? 0.0 : hour * after.generatorHours();
  }

  /** Fuel and wear of an average year, null where the fuel's price is missing. */
  static @Nullable Double runningCost(Costs costs, Trial trial) {
    Double fuel = costs.fuelPerLitreCost(), hour = costs.perGeneratorHourCost();
    return fuel == null
        ? null
        : Double.valueOf(
            trial.fuelL() * fuel + (hour == null ? 0.0 : trial.generatorHours() * hour));
  }

  /** Money for each kWh that it avoids; null where a price is missing or nothing is avoided. */
  public @Nullable Double costPerKwh(Costs costs) {
    Double yearly = yearlyCost(costs);
    return yearly == null || isIdle() ? null : Double.valueOf(yearly / (avoidedWh() / 1000.0));
  }

  /** Money for each unmet hour that it avoids; null where a price is missing or none is avoided. */
  public @Nullable Double costPerUnmetHour(Costs costs) {
    Double yearly = yearlyCost(costs);
    return yearly == null || avoidedUnmetHours() < 0.5
        ? null
        : Double.valueOf(yearly / avoidedUnmetHours());
  }
}
