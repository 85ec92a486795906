package greyspell.storage.step;

import org.jspecify.annotations.Nullable;

/**
 * What a bank does beyond constant efficiencies. Every part may be missing.
 *
 * @param reserveWh all that is never used, below the window; with two tanks also what they hold
 *     beyond the sheet's capacity
 * @param contentWh all that the cells hold, which shares of charge are counted over
 * @param nominalV for which currents in wires were stated
 * @param cells voltage and resistance; missing: the efficiencies of {@link BankLimits}
 * @param tanks rate effect
 * @param taper charge acceptance near full
 */
public record BankDetail(
    double reserveWh,
    double contentWh,
    double nominalV,
    @Nullable CellStep cells,
    @Nullable TwoTank tanks,
    @Nullable Taper taper) {}
