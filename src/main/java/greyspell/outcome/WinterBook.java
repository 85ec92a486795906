package greyspell.outcome;

import java.util.Comparator;
import java.util.List;

/**
 * The records of all winters of a run and where they come from.
 *
 * @param kind decides what may be said of the odds
 * @param described where the winters come from, in a few words: "made from monthly means, seed 7"
 * @param notes what was assumed and what the reader must know, a sentence each
 * @param usableBankWh of the design that was run
 * @param isNorthern decides where winters are cut and which months are winter
 * @param winters in order of their numbers, at least one
 */
public record WinterBook(
    Kind kind,
    String described,
    List<String> notes,
    double usableBankWh,
    boolean isNorthern,
    List<WinterRecord> winters) {
  /** The winter that is shown in full comes once in so many. */
  public static final int SHOWN_ONCE_IN = 10;

  /** Where winters come from. */
  public enum Kind {
    /** As they were, one by one. */
    MEASURED,
    /** Stretches of measured years in new order. */
    SPLICED,
    /** Drawn by a recipe from monthly means. */
    MADE
  }

  public WinterBook {
    notes = List.copyOf(notes);
    winters = List.copyOf(winters);
    if (winters.isEmpty()) {
      throw new IllegalArgumentException("no winters");
    }
  }

  public int count() {
    return winters.size();
  }

  /** Whether {@link RidingBank} leaves nothing out in any winter. */
  public boolean isRidingExact() {
    return winters.stream().allMatch(w -> w.ridingBank().isExact());
  }

  /** Winters in which something asked for was not served. */
  public int darkCount() {
    int dark = 0;
    for (WinterRecord w : winters) {
      dark += w.isDarkFree() ? 0 : 1;
    }
    return dark;
  }

  /** Most Wh unserved first; of those alike the one that would have needed the larger bank. */
  public List<WinterRecord> worstFirst() {
    return winters.stream()
        .sorted(
            Comparator.comparingDouble((WinterRecord w) -> w.wh(WinterSum.UNMET))
                .thenComparingDouble(w -> w.ridingBank().leastWh())
                .reversed()
                .thenComparingInt(WinterRecord::number))
        .toList();
  }

  /**
   * The winter to show for "once in so many years": the one whose rank from the worst over the
   * winters and one is nearest to 1 in {@code years}; the worst where there are fewer.
   */
  public WinterRecord onceIn(int years) {
    long rank = Math.round((count() + 1.0) / years);
    return worstFirst().get((int) Math.max(1, Math.min(rank, count())) - 1);
  }

  /** The winter to show in full: once in ten; of fewer than 14, the worst. */
  public WinterRecord shown() {
    return onceIn(SHOWN_ONCE_IN);
  }
}
