package greyspell.ladder;

import greyspell.sizing.LifeCycleCost;
import greyspell.study.BankLife;
import greyspell.study.Trial;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What to do next, and in which order.
 *
 * @param years of weather altogether; not all need lie in whole winters
 * @param present the home as it stands
 * @param rungs in the order in which they are climbed, free ones first
 * @param idle free steps that change nothing here
 * @param unpriced steps from the present home that have no price, with what they would bring
 * @param refused steps that cannot be built, with the reason
 * @param missingPrices keys of prices that would say more
 * @param end why the ladder ends here, a sentence
 * @param fuelCostPerKwh of a kWh from the generator at the top, null without one or without prices
 * @param presentCost of the home as it stands over the years, null where prices are missing
 * @param topCost of the home at the top of the ladder
 * @param presentLife of the bank as it stands, over the years that are counted
 * @param topLife of the bank at the top
 * @param bars how far each assumption moves the answer, what moves it most first
 * @param standbyWh what goes unserved or comes from an engine in a year because of the system's own
 *     always-on draw, which no step of the list changes
 * @param topText the scenario at the top
 */
public record Ladder(
    int years,
    Trial present,
    List<Rung> rungs,
    List<Step> idle,
    List<Tried> unpriced,
    List<Refused> refused,
    List<String> missingPrices,
    String end,
    @Nullable Double fuelCostPerKwh,
    @Nullable LifeCycleCost presentCost,
    @Nullable LifeCycleCost topCost,
    BankLife presentLife,
    BankLife topLife,
    List<Bar> bars,
    double standbyWh,
    String topText) {
  public Ladder {
    rungs = List.copyOf(rungs);
    idle = List.copyOf(idle);
    unpriced = List.copyOf(unpriced);
    refused = List.copyOf(refused);
    missingPrices = List.copyOf(missingPrices);
    bars = List.copyOf(bars);
  }

  /** A step that cannot be built. */
  public record Refused(Step step, String reason) {}

  /** Money that all rungs cost at once, null if a price is missing. */
  public @Nullable Double onceCost() {
    double sumCost = 0.0;
    for (Rung rung : rungs) {
      Double cost = rung.tried().step().onceCost();
      if (cost == null) {
        return null;
      }
      sumCost += cost;
    }
    return sumCost;
  }

  /** The home at the top. */
  public Trial top() {
    return rungs.isEmpty() ? present : rungs.get(rungs.size() - 1).tried().after();
  }
}
