/**
 * Living with the home as it is: how long the charge lasts from now on, and simple rules for the
 * grey weeks. Runs the home in the weather of {@link greyspell.study.Trials}. Read first: {@code
 * Today}.
 */
@NullMarked
package greyspell.operate;

import org.jspecify.annotations.NullMarked;
