/**
 * Sweeps: one home or many, over values of any of their keys. The question, the fixed order of its
 * runs, and what each run comes to.
 */
@NullMarked
package greyspell.sweep;

import org.jspecify.annotations.NullMarked;
