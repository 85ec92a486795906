/** The inverter. */
@NullMarked
package greyspell.power;

import org.jspecify.annotations.NullMarked;
