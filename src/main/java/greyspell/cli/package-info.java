/** Commands: arguments, progress, exit codes. */
@NullMarked
package greyspell.cli;

import org.jspecify.annotations.NullMarked;
