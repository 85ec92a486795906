package greyspell.storage.step;

import org.jspecify.annotations.Nullable;

/**
 * What a bank does beyond constant efficiencies. Every part may be missing.
 *
 * @param reserveWh charge that is never used, below the window
 * @param fullWh charge of the full bank, reserve and window together
 * @param cells voltage and resistance; missing: the efficiencies of {@link BankLimits}
 * @param tanks rate effect
 * @param taper charge acceptance near full
 */
public record BankDetail(
    double reserveWh,
    double fullWh,
    @Nullable CellStep cells,
    @Nullable TwoTank tanks,
    @Nullable Taper taper) {}
