/** Tests of the scenario file and the equipment library. */
@NullMarked
package greyspell.scenario;

import org.jspecify.annotations.NullMarked;
