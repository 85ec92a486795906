/**
 * The pages that are handed over: explanation.html and explanation.pdf, in the language of their
 * reader.
 *
 * <p>Comes in: a run, its explanation, the electrical check. Goes out: pages made of {@link
 * greyspell.handover.Block}s, written as HTML that needs nothing else, and as PDF. May use {@code
 * report} and below. Read first: {@link greyspell.handover.Handover}, then {@link
 * greyspell.handover.ClientPage}.
 */
@NullMarked
package greyspell.handover;

import org.jspecify.annotations.NullMarked;
