/**
 * From weather to light on a panel.
 *
 * <p>Comes in: {@link greyspell.weather.WeatherSeries} (hour means, local standard time), the
 * {@link Site} and the {@link SkyChoices}. Goes out: {@link PlaneIrradiance}, W/m2 an hour on one
 * plane. May use: weather, calendar, quantity; the sun-position library in {@link SunPosition}
 * alone.
 *
 * <p>Read first: {@link SunPath} (where the sun stands), {@link Radiation} (what of the light is
 * beam), {@link PlaneIrradiance} (what reaches the plane). Each published model is one class.
 *
 * <p>Units: W/m2 as the mean of a whole hour, degrees in public arguments, azimuth clockwise from
 * true north. The sun of an hour stands where it stands in the middle of the hour's sunlit part.
 */
@NullMarked
package greyspell.sky;

import org.jspecify.annotations.NullMarked;
