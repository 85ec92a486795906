/**
 * What is said to people in their own language: patterns of sentences from resource files, and
 * numbers, dates and units as that language writes them.
 *
 * <p>Comes in: keys with values ({@link greyspell.cause.Said}). Goes out: text. May use {@code
 * cause}. Read first: {@link greyspell.words.Words}.
 */
@NullMarked
package greyspell.words;

import org.jspecify.annotations.NullMarked;
