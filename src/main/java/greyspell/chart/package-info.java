/** Pictures. */
@NullMarked
package greyspell.chart;

import org.jspecify.annotations.NullMarked;
