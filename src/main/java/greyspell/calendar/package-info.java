/** Hours of whole years in local standard time. */
@NullMarked
package greyspell.calendar;

import org.jspecify.annotations.NullMarked;
