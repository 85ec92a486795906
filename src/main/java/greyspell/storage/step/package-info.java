/** Plain per-hour parameters for the hourly loop. */
@NullMarked
package greyspell.storage.step;

import org.jspecify.annotations.NullMarked;
