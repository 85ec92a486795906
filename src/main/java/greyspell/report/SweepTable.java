package greyspell.report;

import greyspell.electrical.Finding.Severity;
import greyspell.outcome.Outcome.WinterBooks;
import greyspell.study.Trial;
import greyspell.study.VariantFigures;
import greyspell.sweep.SweepQuestion;
import greyspell.sweep.SweepRow;
import greyspell.sweep.SweepValues;
import greyspell.sweep.Variation;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A sweep as a table: one row a run, docs/sweep.md says what every column means. A key varied over
 * numbers of one unit has that unit in its heading and bare numbers below it.
 */
public final class SweepTable {
  static final List<String> FIGURES =
      List.of(
          "whole_winters",
          "dark_winters",
          "unmet_hours_per_year",
          "unmet_kwh_per_year",
          "shed_kwh_per_year",
          "load_kwh_per_year",
          "worst_winter",
          "worst_winter_unmet_hours",
          "worst_winter_unmet_kwh",
          "generator_hours_per_year",
          "generator_starts_per_year",
          "generator_kwh_per_year",
          "generator_fuel_l_per_year",
          "curtailed_kwh_per_year",
          "lowest_charge_pct",
          "usable_bank_kwh",
          "grey_autonomy_p10_days",
          "grey_autonomy_worst_days",
          "strings",
          "checks",
          "fault");

  static final String UNMET_HOURS = "unmet_hours_per_year";
  static final String FAULT = "fault";
  private static final int DECIMALS = 3;

  private final List<String> columns = new ArrayList<>();
  private final List<@Nullable String> units = new ArrayList<>();

  public SweepTable(SweepQuestion question) {
    columns.add("home");
    columns.add("file");
    for (Variation variation : question.variations()) {
      String unit = SweepValues.sharedUnit(variation.values());
      units.add(unit);
      columns.add(variation.path() + (unit == null || unit.isEmpty() ? "" : " (" + unit + ")"));
    }
    columns.addAll(FIGURES);
  }

  public List<String> columns() {
    return List.copyOf(columns);
  }

  /** In the order of the columns; empty where there is nothing to tell. */
  public List<String> cells(SweepRow row) {
    var cells = new ArrayList<String>();
    cells.add(row.home());
    cells.add(row.file());
    for (int k = 0; k < row.values().size(); k++) {
      String unit = units.get(k);
      String value = unquoted(row.values().get(k));
      cells.add(unit == null ? value : SweepValues.number(value));
    }
    VariantFigures figures = row.figures();
    if (figures == null) {
      FIGURES.subList(0, FIGURES.size() - 3).forEach(f -> cells.add(""));
    } else {
      addFigures(figures, cells);
    }
    cells.add(word(row.strings()));
    cells.add(word(row.checks()));
    cells.add(row.fault());
    return cells;
  }

  private static void addFigures(VariantFigures f, List<String> cells) {
    Trial t = f.trial();
    cells.add(Integer.toString(t.winters().size()));
    cells.add(Integer.toString(t.darkWinters()));
    cells.add(number(t.unmet().unmetHours()));
    cells.add(kwh(t.unmet().wh()));
    cells.add(kwh(t.unmet().letGoWh()));
    cells.add(kwh(t.loadWh()));
    WinterBooks worst = t.worstWinter();
    cells.add(worst == null ? "" : worst.winter().name());
    cells.add(worst == null ? "" : Integer.toString(worst.figures().unmetHours()));
    cells.add(worst == null ? "" : kwh(worst.figures().unmetWh()));
    cells.add(number(t.generatorHours()));
    cells.add(number((double) t.generatorStarts() / f.years()));
    cells.add(kwh(t.unmet().generatorWh()));
    cells.add(number(t.fuelL()));
    cells.add(kwh(t.curtailedWh()));
    cells.add(number(f.lowestChargeShare() * 100.0));
    cells.add(kwh(f.usableBankWh()));
    cells.add(number(f.greyP10Days()));
    cells.add(number(f.greyWorstDays()));
  }

  private static String word(@Nullable Severity severity) {
    return severity == null ? "" : severity.word();
  }

  private static String kwh(double wh) {
    return number(wh / 1000.0);
  }

  /** At most three decimals, no more than are needed. */
  static String number(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  private static String unquoted(String value) {
    char first = value.isEmpty() ? ' ' : value.charAt(0);
    boolean isQuoted =
        value.length() > 1
            && (first == '"' || first == '\'')
            && value.charAt(value.length() - 1) == first;
    return isQuoted ? value.substring(1, value.length() - 1) : value;
  }

  // ---- CSV
  // ----------------------------------------------------------------------------------------

  /** One line, without its line break. */
  public static String line(List<String> cells) {
    return cells.stream().map(SweepTable::cell).collect(Collectors.joining(","));
  }

  private static String cell(String text) {
    String flat = text.replaceAll("[\\r\\n]+", " ");
    boolean isPlain = flat.indexOf(',') < 0 && flat.indexOf('"') < 0;
    return isPlain ? flat : "\"" + flat.replace("\"", "\"\"") + "\"";
  }

  /** The cells of a line that was written by {@link #line}. */
  static List<String> cellsOf(String line) {
    var cells = new ArrayList<String>();
    var cell = new StringBuilder();
    boolean isQuoted = false;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (isQuoted && c == '"' && i + 1 < line.length() && line.charAt(i + 1) == '"') {
        cell.append(c);
        i++;
      } else if (c == '"') {
        isQuoted = !isQuoted;
      } else if (c == ',' && !isQuoted) {
        cells.add(cell.toString());
        cell.setLength(0);
      } else {
        cell.append(c);
      }
    }
    cells.add(cell.toString());
    return cells;
  }
}
