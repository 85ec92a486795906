/** Figures read off a ledger. */
@NullMarked
package greyspell.outcome;

import org.jspecify.annotations.NullMarked;
