/**
 * Weather series, the readers of open formats and made weather.
 *
 * <p>Comes in: a path and the site's UTC offset, or the recipe of an invented climate and a seed.
 * Goes out: {@link greyspell.weather.WeatherSeries}, hourly means of whole years on local standard
 * time, without holes, with a report of what was filled.
 *
 * <p>May use: quantity, calendar; of libraries Commons Math (random numbers). No library for CSV:
 * the readers scan bytes, which was faster from a cold start (docs/weather-files.md tells the
 * formats).
 *
 * <p>Read first: WeatherReader and JoinedFiles, then PlainCsvReader and HourGrid (rows of real
 * time) or EpwReader and YearRows (one year by month, day and hour), then GapFiller.
 * ClimateGenerator stands apart.
 *
 * <p>Units: W/m2, C, m/s, cloud as a share of the sky, snow in m.
 */
@NullMarked
package greyspell.weather;

import org.jspecify.annotations.NullMarked;
