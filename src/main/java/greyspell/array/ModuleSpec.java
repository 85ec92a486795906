package greyspell.array;

import org.jspecify.annotations.Nullable;

/**
 * A module's data sheet at standard test conditions (1000 W/m², 25 °C cell).
 *
 * @param powerPerK relative change of maximum power, negative, 1/K
 * @param openCircuitPerK relative change of open-circuit voltage, negative, 1/K
 * @param shortCircuitPerK relative change of short-circuit current, 1/K
 * @param nominalCellC cell temperature at 800 W/m², 20 °C air, 1 m/s wind
 * @param cellsInSeries cells in one series path (half-cut modules: half of all)
 * @param maxSystemV highest system voltage, null if not on the sticker
 * @param areaM2 frame area, null if not on the sticker
 */
public record ModuleSpec(
    String name,
    double ratedPowerW,
    double openCircuitV,
    double shortCircuitA,
    double maxPowerV,
    double maxPowerA,
    double powerPerK,
    double openCircuitPerK,
    double shortCircuitPerK,
    double nominalCellC,
    int cellsInSeries,
    @Nullable Double maxSystemV,
    @Nullable Double areaM2) {}
