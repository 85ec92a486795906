package greyspell.ladder;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One thing that could be done or bought.
 *
 * @param words in a few plain words
 * @param changes of the scenario's text that make it; {@code run} on the changed text confirms what
 *     the ladder says of it
 * @param onceCost what it costs once, 0 for what is free, null where the price is not stated
 * @param priceKeys where the user would state the price: {@code costs.per_pack}
 * @param pieces so many of what has a price: panels, packs
 * @param lifeYears how long it lasts, null for as long as costs are added up
 */
public record Step(
    Kind kind,
    String words,
    List<Change> changes,
    @Nullable Double onceCost,
    List<String> priceKeys,
    int pieces,
    @Nullable Double lifeYears) {
  public Step {
    changes = List.copyOf(changes);
    priceKeys = List.copyOf(priceKeys);
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
    return new Step(kind, words, List.of(changes), 0.0, List.of(), 1, null);
  }
}
