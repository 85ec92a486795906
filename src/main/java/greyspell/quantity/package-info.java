/**
 * Values with units, argument checks and the faults that a user is shown.
 *
 * <p>In: text such as {@code 5.12 kWh}. Out: numbers in inside units (W, Wh, V, A, °C, deg, m, a
 * share of 1, h), and the other way round: {@link greyspell.quantity.Quantity} prints what reads
 * back as the same number, {@link greyspell.quantity.Show} prints what people like to read. Open to
 * every room, uses none. A new unit is one line in {@link greyspell.quantity.Unit}.
 */
@NullMarked
package greyspell.quantity;

import org.jspecify.annotations.NullMarked;
