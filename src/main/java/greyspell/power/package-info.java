/**
 * Inverter, generator, and a second source.
 *
 * <p>Comes in: {@link greyspell.power.InverterSpec}, {@link greyspell.power.GeneratorSpec} with
 * {@link greyspell.power.GeneratorRules}, a file of watts. Goes out: plain limits for the hourly
 * loop ({@link greyspell.power.InverterCurve}, {@link greyspell.power.GeneratorRun}), standby and
 * sleep hour by hour, energy of the second source ({@link greyspell.power.SourceLog}); and, read
 * from the finished hours, fuel ({@link greyspell.power.FuelUse}) and peaks ({@link
 * greyspell.power.PeakCheck}). May use: quantity, calendar. Read first: {@link
 * greyspell.power.InverterCurve}, {@link greyspell.power.GeneratorSpec}. Units: W, Wh, l, °C,
 * shares of 1.
 */
@NullMarked
package greyspell.power;

import org.jspecify.annotations.NullMarked;
