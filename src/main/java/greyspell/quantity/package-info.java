/** Values with units, argument checks and the faults that a user is shown. */
@NullMarked
package greyspell.quantity;

import org.jspecify.annotations.NullMarked;
