/**
 * Modules, strings, controllers: light to solar energy on the bus.
 *
 * <p>Comes in: light on each plane (W/m², hour by hour), air temperature, wind, and what the
 * stickers say ({@link greyspell.array.ArraySpec}, {@link greyspell.array.ControllerSpec}). Goes
 * out: {@link greyspell.array.SolarHours} (Wh at the controller's input with each loss by name) and
 * {@link greyspell.array.ControllerHours} (Wh on the bus). May use: quantity, calendar, sky,
 * weather. Read first: {@link greyspell.array.SolarChain}. Units: W, Wh, V, A, °C, W/m²;
 * coefficients in 1/K.
 */
@NullMarked
package greyspell.array;

import org.jspecify.annotations.NullMarked;
