/** What the house asks for, hour by hour. */
@NullMarked
package greyspell.load;

import org.jspecify.annotations.NullMarked;
