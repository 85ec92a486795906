/**
 * The inverter.
 *
 * <p>Comes in: {@link greyspell.power.InverterSpec}. Goes out: {@link
 * greyspell.power.step.InverterLimits} for the hourly loop ({@link greyspell.power.InverterCurve})
 * and its standby hour by hour. May use: quantity. Read first: {@link
 * greyspell.power.InverterCurve}. Units: W, Wh, shares of 1.
 */
@NullMarked
package greyspell.power;

import org.jspecify.annotations.NullMarked;
