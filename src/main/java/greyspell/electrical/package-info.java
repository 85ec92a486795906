/**
 * What happens before any sun is counted: do the strings suit the controller in the cold and in the
 * heat, do the wires suit the currents, does the bank hold a motor start.
 *
 * <p>Comes in: data sheets ({@link greyspell.array.ModuleSpec}, {@link
 * greyspell.array.ControllerSpec}, {@link greyspell.storage.BankSpec}, {@link
 * greyspell.power.InverterSpec}), record temperatures, and wires as the user states them. Goes out:
 * {@link greyspell.electrical.Finding}s, pass, caution, unknown or fail, each with its numbers and
 * its reason. Nothing here recommends a size of wire, fuse or breaker, and nothing claims that a
 * code is met: {@link greyspell.electrical.LocalCode}. May use: quantity, calendar, array, storage,
 * power, load. Read first: {@link greyspell.electrical.StringJudge} and {@link
 * greyspell.electrical.ConductorJudge}. Units: V, A, W, Wh, Ohm, m, °C.
 */
@NullMarked
package greyspell.electrical;

import org.jspecify.annotations.NullMarked;
