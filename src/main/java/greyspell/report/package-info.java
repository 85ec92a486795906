/** Pages, tables and files. */
@NullMarked
package greyspell.report;

import org.jspecify.annotations.NullMarked;
