package greyspell.report;

import java.util.List;

/** What is said on the terminal when a sweep is done. */
public final class SweepSummary {
  private SweepSummary() {}

  /** Rows that were refused. */
  public static int refused(List<String> columns, List<List<String>> rows) {
    int fault = columns.indexOf(SweepTable.FAULT);
    return (int) rows.stream().filter(row -> !row.get(fault).isEmpty()).count();
  }

  /** How many runs, between which answers, and what was refused. */
  public static String text(List<String> columns, List<List<String>> rows) {
    int at = columns.indexOf(SweepTable.UNMET_HOURS);
    var hours =
        rows.stream()
            .map(row -> row.get(at))
            .filter(c -> !c.isEmpty())
            .mapToDouble(Double::parseDouble)
            .summaryStatistics();
    int refused = refused(columns, rows);
    var text = new StringBuilder();
    text.append(rows.size() == 1 ? "1 run" : rows.size() + " runs");
    if (hours.getCount() > 0) {
      String least = SweepTable.number(hours.getMin()), most = SweepTable.number(hours.getMax());
      text.append("; unmet hours a year ");
      text.append(least.equals(most) ? least : "from " + least + " to " + most);
    }
    text.append(".\n");
    if (refused > 0) {
      text.append(refused == 1 ? "1 run was" : refused + " runs were");
      text.append(" refused; the column \"fault\" says why. The first:\n");
      int fault = columns.indexOf(SweepTable.FAULT);
      Columns.wrap(
          text,
          "  ",
          rows.stream().map(r -> r.get(fault)).filter(f -> !f.isEmpty()).findFirst().orElse(""));
    }
    return text.toString();
  }
}
