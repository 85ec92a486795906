/** Plain per-hour parameters for the hourly loop. */
@NullMarked
package greyspell.power.step;

import org.jspecify.annotations.NullMarked;
