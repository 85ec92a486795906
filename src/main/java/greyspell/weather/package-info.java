/** Weather series and the readers of open formats. */
@NullMarked
package greyspell.weather;

import org.jspecify.annotations.NullMarked;
