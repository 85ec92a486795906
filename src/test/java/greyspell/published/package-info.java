/** Checks against published values, gathered into docs/validation.md. */
@NullMarked
package greyspell.published;

import org.jspecify.annotations.NullMarked;
