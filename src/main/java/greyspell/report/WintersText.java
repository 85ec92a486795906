package greyspell.report;

import greyspell.chart.Say;
import greyspell.outcome.WinterBook;
import greyspell.report.Page.Row;
import greyspell.report.Page.Table;
import greyspell.study.ManyWinters;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Many winters on the terminal: the verdict as a count, the odds, bands, and what returns. */
public final class WintersText {
  private static final int MOST_CAUTIONS = 3;

  private WintersText() {}

  /** The text, each line ended; {@code written} may be empty. */
  public static String text(ManyWinters many, List<Path> written) {
    var out = new StringBuilder();
    WinterBook book = many.book();
    Columns.wrap(out, "", heading(many));
    out.append('\n');
    Verdict verdict = WinterVerdict.of(many);
    Columns.wrap(out, "", verdict.headline());
    if (!verdict.demand().isEmpty()) {
      Columns.wrap(out, "", verdict.demand());
    }
    for (String line : verdict.more()) {
      Columns.wrap(out, "  ", line);
    }
    var tables = new ManyTables(book);
    table(out, tables.bands());
    table(out, tables.returns());
    String note = tables.tailNote();
    if (!note.isEmpty()) {
      Columns.wrap(out, "  ", note);
    }
    cautions(out, many);
    written(out, written);
    return out.toString();
  }

  static String heading(ManyWinters many) {
    String home = many.scenario().name(), place = many.scenario().site().name();
    return (place.isEmpty() || place.equals(home) ? home : home + ", " + place)
        + ": "
        + WinterVerdict.winters(many.book().count())
        + ", "
        + many.book().described();
  }

  private static void table(StringBuilder out, Table table) {
    out.append('\n');
    var columns = new Columns();
    int wide = table.head().get(0).length();
    for (Row row : table.rows()) {
      wide = Math.max(wide, row.cells().get(0).length());
    }
    columns.row(line(table.head(), wide));
    for (Row row : table.rows()) {
      columns.row(line(row.cells(), wide));
    }
    columns.write(out, false);
  }

  /** Numbers stand to the right, the word that leads them to the left. */
  private static String[] line(List<String> cells, int wide) {
    var line = cells.toArray(new String[0]);
    line[0] = line[0] + " ".repeat(wide - line[0].length());
    return line;
  }

  private static void cautions(StringBuilder out, ManyWinters many) {
    var all = new ArrayList<String>(many.cautions());
    if (all.isEmpty()) {
      return;
    }
    out.append('\n');
    for (String caution : all.subList(0, Math.min(MOST_CAUTIONS, all.size()))) {
      Columns.wrap(out, "  Caution  ", caution);
    }
    int left = all.size() - MOST_CAUTIONS;
    if (left > 0) {
      Columns.wrap(
          out, "  ", "and " + Say.count(left, "more caution", "more cautions") + " on the page");
    }
  }

  private static void written(StringBuilder out, List<Path> written) {
    if (written.isEmpty()) {
      return;
    }
    Path parent = written.get(0).getParent();
    out.append('\n');
    Columns.wrap(
        out,
        "",
        "Written to "
            + (parent == null ? "." : parent)
            + "; open "
            + ReportFiles.PAGE
            + " to read on");
  }
}
