/** Documents that tests write and keep true. */
@NullMarked
package greyspell.docs;

import org.jspecify.annotations.NullMarked;
