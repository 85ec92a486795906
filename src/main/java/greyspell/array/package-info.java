/** Modules, strings, controllers: light to solar energy on the bus. */
@NullMarked
package greyspell.array;

import org.jspecify.annotations.NullMarked;
