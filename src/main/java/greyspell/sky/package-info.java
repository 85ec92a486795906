/** Sun, clear sky, cloud, split, tilt, horizon. */
@NullMarked
package greyspell.sky;

import org.jspecify.annotations.NullMarked;
