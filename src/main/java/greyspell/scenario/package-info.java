/**
 * The scenario file and the equipment library.
 *
 * <p>In: a YAML file that a user wrote, and the library's data sheets that it names. Out: a {@link
 * greyspell.scenario.Scenario} of checked records with every default filled in and listed, or one
 * {@link greyspell.quantity.BadInput} with every fault of the file, its line and its column.
 *
 * <p>Read first: {@link greyspell.scenario.ScenarioReader}, then {@code Vocabulary}, which declares
 * every key once; the binder, the reference page and the JSON Schema follow from it. {@code Block}
 * reads values and notes faults; {@code Plausibility} cautions. Only this room sees the YAML
 * library. A new key: declare it in {@code Vocabulary}, put it into its shape, read it in the
 * binder of its part, and make the documents anew ({@code -Ddocs=write}).
 */
@NullMarked
package greyspell.scenario;

import org.jspecify.annotations.NullMarked;
