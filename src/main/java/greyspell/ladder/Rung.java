package greyspell.ladder;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One rung: the step that was taken, and those that did as well within the spread of the winters.
 *
 * @param text the scenario with it
 * @param costPerKwh money for each kWh that it avoids; 0 for what is free, null without prices
 * @param costPerUnmetHour null where no unmet hour is avoided or prices are missing
 * @param ties words of other steps of this rung that cannot be told from it
 * @param flips below what price another kind of step would have been taken instead
 * @param upTo above what price of its own another kind of step would have been taken; null where no
 *     other has a price
 */
public record Rung(
    Tried tried,
    String text,
    @Nullable Double costPerKwh,
    @Nullable Double costPerUnmetHour,
    List<String> ties,
    List<Turn> flips,
    @Nullable Turn upTo) {
  public Rung {
    ties = List.copyOf(ties);
    flips = List.copyOf(flips);
  }
}
