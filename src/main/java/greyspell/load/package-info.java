/**
 * What the house asks for, hour by hour.
 *
 * <p>Comes in: {@link greyspell.load.LoadPlan} (appliances) and, where the house was measured, a
 * log ({@link greyspell.load.LoadLogReader} reads the file, {@link greyspell.load.LoadLog} fills
 * and extends it). Goes out: {@link greyspell.load.LoadHours}. May use: quantity, calendar,
 * weather. Read first: {@link greyspell.load.LoadHours}. Units: W, Wh, hours after midnight in
 * local standard time.
 */
@NullMarked
package greyspell.load;

import org.jspecify.annotations.NullMarked;
