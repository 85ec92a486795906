/** What the hourly loop needs to know of the loads' rules. */
@NullMarked
package greyspell.load.step;

import org.jspecify.annotations.NullMarked;
