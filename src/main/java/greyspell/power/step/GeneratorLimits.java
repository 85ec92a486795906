package greyspell.power.step;

/**
 * What the hourly loop needs to know of a generator and its charger. The arrays hold one value an
 * hour and are not written.
 *
 * @param mostW AC power that it can hold in this hour's air
 * @param permitted whether it may run in this hour
 * @param chargerMostAcW most that the charger takes from the generator
 * @param chargerEfficiency generator to bus, above 0 to 1
 * @param startBelowShare starts when the charge falls below this share of the usable window
 * @param stopAboveShare stops when the charge has reached this share
 * @param minimumRunH runs at least this many hours, unless they are not permitted
 */
@SuppressWarnings("ArrayRecordComponent") // plain parameters for the loop, never compared
public record GeneratorLimits(
    double[] mostW,
    boolean[] permitted,
    double chargerMostAcW,
    double chargerEfficiency,
    double startBelowShare,
    double stopAboveShare,
    int minimumRunH) {}
