/** Tests of the sky. */
@NullMarked
package greyspell.sky;

import org.jspecify.annotations.NullMarked;
