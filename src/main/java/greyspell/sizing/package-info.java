/** What other panels and banks would come to, over many winters. */
@NullMarked
package greyspell.sizing;

import org.jspecify.annotations.NullMarked;
