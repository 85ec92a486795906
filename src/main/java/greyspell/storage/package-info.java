/** The battery bank. */
@NullMarked
package greyspell.storage;

import org.jspecify.annotations.NullMarked;
