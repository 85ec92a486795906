/** The hourly loop. */
@NullMarked
package greyspell.balance;

import org.jspecify.annotations.NullMarked;
