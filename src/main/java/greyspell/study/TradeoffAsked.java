package greyspell.study;

import org.jspecify.annotations.Nullable;

/**
 * What a map of panels against storage is to show; null takes what suits the home.
 *
 * @param plane only strings of the plane of this name are added or taken away
 * @param leastModules at the left edge
 * @param mostModules at the right edge
 * @param everyStrings so many strings from one column to the next
 * @param leastStorageWh nominal energy at the lower edge
 * @param mostStorageWh nominal energy at the upper edge
 * @param storageStepWh nominal energy from row to row
 * @param roofModules room for modules, all planes together
 * @param budgetCost most that may be spent beyond what stands
 * @param targetHours unmet hours of an average year that are borne
 */
public record TradeoffAsked(
    @Nullable String plane,
    @Nullable Integer leastModules,
    @Nullable Integer mostModules,
    int everyStrings,
    @Nullable Double leastStorageWh,
    @Nullable Double mostStorageWh,
    @Nullable Double storageStepWh,
    @Nullable Integer roofModules,
    @Nullable Double budgetCost,
    double targetHours) {
  /** A day a year. */
  public static final double USUAL_TARGET_HOURS = 24.0;

  public static final TradeoffAsked USUAL =
      new TradeoffAsked(null, null, null, 1, null, null, null, null, null, USUAL_TARGET_HOURS);
}
