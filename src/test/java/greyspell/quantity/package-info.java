/** Tests of values with units. */
@NullMarked
package greyspell.quantity;

import org.jspecify.annotations.NullMarked;
