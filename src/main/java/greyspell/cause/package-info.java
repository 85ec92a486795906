/**
 * Why the lights went out: shares of the causes, dark spells and their story.
 *
 * <p>Comes in: a ledger, its shortfalls, and a run for each set of causes left out. Goes out:
 * shares that sum to the whole, spells with their days, and sentences as keys with values, so that
 * they can be said in any language. May use {@code balance} and {@code outcome}. Read first: {@link
 * greyspell.cause.ShapleyShares}, then {@link greyspell.cause.DarkSpells}.
 */
@NullMarked
package greyspell.cause;

import org.jspecify.annotations.NullMarked;
