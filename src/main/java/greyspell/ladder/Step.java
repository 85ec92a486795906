package greyspell.ladder;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One thing that could be done or bought.
 *
 * @param words in a few plain words
 * @param changes of the scenario's text that make it; {@code run} on the changed text confirms what
 *     the ladder says of it
 * @param prices of all that it takes, the one that is asked about first in front; empty for what is
 *     free
 * @param lifeYears how long it lasts, null for as long as costs are added up
 */
public record Step(
    Kind kind, String words, List<Change> changes, List<Price> prices, @Nullable Double lifeYears) {
  public Step {
    changes = List.copyOf(changes);
    prices = List.copyOf(prices);
  }

  /**
   * What one of its parts costs.
   *
   * @param key where the user states it: {@code costs.per_pack}
   * @param piece of what, in words: a pack
   * @param count so many of it
   * @param cost of one, null where it is not stated
   */
  public record Price(String key, String piece, int count, @Nullable Double cost) {}

  /** What it costs once, 0 for what is free, null where a price is not stated. */
  public @Nullable Double onceCost() {
    double sumCost = 0.0;
    for (Price price : prices) {
      if (price.cost() == null) {
        return null;
      }
      sumCost += price.count() * price.cost();
    }
    return sumCost;
  }

  /** What competes with other things as one: panels, storage; each measure by itself. */
  String family() {
    return kind == Kind.MEASURE ? words : kind.words();
  }

  /** So many of what its first price is for: panels, packs. */
  public int pieces() {
    return prices.isEmpty() ? 1 : prices.get(0).count();
  }

  /** What sort of thing it is. */
  public enum Kind {
    UNPLUG("standby of appliances", true),
    TIMER("an always-on appliance on a timer", true),
    MOVE("using something at midday", true),
    SWEEP("keeping panels free of snow", true),
    PANELS("panels", false),
    PACK("storage", false),
    TILT("tilt", false),
    GENERATOR("a generator", false),
    MEASURE("a measure of yours", false);

    private final String words;
    private final boolean isFree;

    Kind(String words, boolean isFree) {
      this.words = words;
      this.isFree = isFree;
    }

    public String words() {
      return words;
    }

    /** Whether it costs no money. */
    public boolean isFree() {
      return isFree;
    }
  }

  /** One key of the scenario file and what it is then. */
  public record Change(String path, String value) {}

  static Step free(Kind kind, String words, Change... changes) {
    return new Step(kind, words, List.of(changes), List.of(), null);
  }
}
