package greyspell.weather;

import org.jspecify.annotations.Nullable;

/**
 * Where a series came from, as far as its file says.
 *
 * @param file path as the user gave it
 * @param format "plain CSV", "EPW", "TMY3"
 * @param place name in the file, empty if none
 * @param latitudeDeg null if the file does not say
 * @param longitudeDeg east positive
 * @param elevationM above the sea
 * @param utcOffsetH offset of the series' clock: local standard time minus UTC, may be fractional
 */
public record WeatherSource(
    String file,
    String format,
    String place,
    @Nullable Double latitudeDeg,
    @Nullable Double longitudeDeg,
    @Nullable Double elevationM,
    double utcOffsetH) {}
