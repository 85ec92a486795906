package greyspell.report;

import greyspell.outcome.WinterBook;
import greyspell.outcome.WinterRecord;
import greyspell.report.Page.Table;
import greyspell.study.ManyWinters;
import java.util.ArrayList;
import java.util.List;

/**
 * What the page says of many winters; the rest of it shows one of them in full.
 *
 * @param drawn where the winters come from
 * @param pictures SVG text: dots, charge, banks; empty if the run was asked for none
 * @param shownTitle names the winter that the rest of the page shows
 * @param notes what was assumed of the winters
 */
public record WintersPage(
    String drawn,
    List<String> pictures,
    Table bands,
    Table months,
    Table returns,
    String tailNote,
    Table byLength,
    Table byDepth,
    Table worst,
    String shownTitle,
    String shownSentence,
    List<String> notes) {
  private static final int MOST_ROWS = 10;

  static WintersPage of(ManyWinters many, List<String> pictures) {
    WinterBook book = many.book();
    WinterRecord shown = book.shown();
    var tables = new ManyTables(book);
    return new WintersPage(
        WinterVerdict.winters(book.count())
            + ", "
            + book.described()
            + ". What is usual or met in one of ten is read off each figure by itself: no single winter has"
            + " all of them.",
        pictures,
        tables.bands(),
        tables.months(),
        tables.returns(),
        tables.tailNote(),
        tables.byLength(),
        tables.byDepth(),
        tables.worst(MOST_ROWS, shown),
        "One of them in full: " + shown.name(),
        many.standing(shown) + " All that follows on this page is of this winter.",
        new ArrayList<>(book.notes()));
  }
}
