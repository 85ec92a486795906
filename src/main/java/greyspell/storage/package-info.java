/**
 * The battery bank.
 *
 * <p>Comes in: {@link greyspell.storage.BankSpec}, the air's temperature. Goes out: {@link
 * greyspell.storage.step.BankLimits} for the hourly loop, the bank's own temperature and its
 * heater's draw ({@link greyspell.storage.BankTemperature}), and what the cold forbids ({@link
 * greyspell.storage.ColdLimits}). May use: quantity. Read first: {@link
 * greyspell.storage.BankSpec}. Units: Wh, W, V, °C, shares of 1.
 */
@NullMarked
package greyspell.storage;

import org.jspecify.annotations.NullMarked;
