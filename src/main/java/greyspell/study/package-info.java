/** One place that wires the rooms together. */
@NullMarked
package greyspell.study;

import org.jspecify.annotations.NullMarked;
