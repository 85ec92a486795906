package greyspell.report;

import greyspell.scenario.Scenario.Assumption;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the page's template fills in, in words ready to print.
 *
 * @param demand what has to be done whatever the verdict, empty if nothing
 * @param surety how far the answer can be trusted, as far as the loads tell
 * @param pictures SVG text by place on the page: months, fortnight, grey spells, charge and, where
 *     there is more than the sun, sources; empty if the run was asked for none
 * @param generator null for a home without one
 * @param manyWinters null where the home was run through its own weather alone
 */
public record Page(
    String name,
    String heading,
    String note,
    boolean isAllServed,
    String headline,
    String demand,
    List<String> more,
    List<Pair> keyFigures,
    List<String> runningOut,
    List<String> surety,
    Table range,
    List<String> pictures,
    String fortnightTitle,
    Table fortnight,
    String spellsSentence,
    Table spells,
    Table books,
    String booksNote,
    Table rules,
    Table reasons,
    String alwaysOn,
    Table alwaysOnParts,
    Table winters,
    Table autonomy,
    String greyAutonomy,
    @Nullable GeneratorPage generator,
    BankPage bank,
    Table peaks,
    Table losses,
    ElectricalPage electrical,
    List<Pair> inputs,
    List<Assumption> assumptions,
    List<String> cautions,
    List<Pair> words,
    @Nullable WintersPage manyWinters) {
  /** A word and what belongs to it. */
  public record Pair(String word, String text) {}

  /** A table; the first column is text, the others are numbers unless {@code isText}. */
  public record Table(List<String> head, List<Row> rows) {}

  /** A row; a marked one is set apart. */
  public record Row(List<String> cells, boolean isMarked) {}
}
