package greyspell.array;

import org.jspecify.annotations.Nullable;

/**
 * A charge controller that tracks the maximum power point; several alike may stand side by side.
 *
 * @param count how many
 * @param maxOutputW of one, null if only the current is limited
 * @param maxOutputA charging current of one at the bank's voltage, null if only power is limited
 * @param efficiency solar to bus, 0 to 1
 * @param lowestTrackingV lower end of the tracking window, null if not stated
 * @param highestTrackingV upper end of the tracking window
 * @param startV voltage from which it starts, null if not stated
 * @param absoluteMaximumV never to be exceeded on the input, null if not stated
 * @param maxShortCircuitA never to be exceeded on the input, null if not stated
 * @param standbyW drawn from the bus all day and night, each
 */
public record ControllerSpec(
    String name,
    int count,
    @Nullable Double maxOutputW,
    @Nullable Double maxOutputA,
    double efficiency,
    @Nullable Double lowestTrackingV,
    @Nullable Double highestTrackingV,
    @Nullable Double startV,
    @Nullable Double absoluteMaximumV,
    @Nullable Double maxShortCircuitA,
    double standbyW) {}
