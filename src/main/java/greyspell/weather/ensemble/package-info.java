/**
 * Many winters at one place: made from twelve monthly means, spliced from measured years, or the
 * measured years one by one.
 *
 * <p>Comes in: a {@link greyspell.weather.ensemble.SiteClimate} or a {@link
 * greyspell.weather.WeatherSeries}, choices and a seed. Goes out: a {@link
 * greyspell.weather.ensemble.WinterSource} that fills one reused year at a time, the same whatever
 * the order of asking.
 *
 * <p>May use: weather, quantity, calendar; of libraries Commons Math (the normal distribution).
 *
 * <p>Read first: EnsembleSource (what there is), then MadeWinters, DailyClearness and HourSpread
 * (years from means), then SplicedWinters (years from years).
 *
 * <p>Units: W/m2, Wh/m2, C, clearness as a share of the sunshine above the air.
 */
@NullMarked
package greyspell.weather.ensemble;

import org.jspecify.annotations.NullMarked;
