/**
 * What a monitor's log says of a home beside what was expected of it: a diagnosis that is read, and
 * changes nothing.
 */
@NullMarked
package greyspell.cause.log;

import org.jspecify.annotations.NullMarked;
