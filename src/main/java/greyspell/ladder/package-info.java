/**
 * What to do or buy next: steps that change one thing in the text of a scenario, each run in the
 * same weather, the best first. Comes in: a scenario file; goes out: {@link
 * greyspell.ladder.Ladder}. Read first: {@code Climb}.
 */
@NullMarked
package greyspell.ladder;

import org.jspecify.annotations.NullMarked;
