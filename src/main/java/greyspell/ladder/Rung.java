package greyspell.ladder;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One rung: the step that was taken, and those that did as well within the spread of the winters.
 *
 * @param costPerKwh money for each kWh that it avoids; 0 for what is free, null without prices
 * @param costPerUnmetHour null where no unmet hour is avoided or prices are missing
 * @param ties words of other steps of this rung that cannot be told from it
 * @param flips at what price of a piece another kind of step would have been taken instead
 */
public record Rung(
    Tried tried,
    @Nullable Double costPerKwh,
    @Nullable Double costPerUnmetHour,
    List<String> ties,
    List<Flip> flips) {
  public Rung {
    ties = List.copyOf(ties);
    flips = List.copyOf(flips);
  }

  /**
   * Where the order turns.
   *
   * @param tried the step that was not taken
   * @param pieceCost price of one of its pieces below which it would be the better buy
   * @param statedCost what a piece costs now, null if no price is stated
   */
  public record Flip(Tried tried, double pieceCost, @Nullable Double statedCost) {}
}
