/**
 * Pictures.
 *
 * <p>Comes in: a {@code StudyResult}, or a {@code WeatherSeries} for the quick looks. Goes out:
 * {@link greyspell.chart.Picture}s as SVG text or PNG bytes; nothing is written to files here. May
 * use: study and below.
 *
 * <p>A picture draws itself once, on a {@code Canvas}; {@code SvgCanvas} and {@code RasterCanvas}
 * are the two kinds, so that both formats agree. Layout goes by {@code TextWidth}, not by the fonts
 * of the machine. Colours and sizes stand in {@code Look}. Java's own drawing classes are touched
 * only by {@code RasterCanvas} and {@code WeatherPictures}: a run without pictures loads none.
 *
 * <p>Read first: {@code Picture}, then {@code GreySpellPicture}. Units: Wh inside, kWh and % on
 * paper ({@link greyspell.chart.Say}).
 */
@NullMarked
package greyspell.chart;

import org.jspecify.annotations.NullMarked;
