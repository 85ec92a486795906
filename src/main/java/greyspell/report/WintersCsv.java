package greyspell.report;

import greyspell.outcome.GreySpell;
import greyspell.outcome.Shortfall;
import greyspell.outcome.WinterBook;
import greyspell.outcome.WinterRecord;
import greyspell.outcome.WinterSum;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Many winters as CSV, a row each, in the order of their numbers; kWh to three decimals. */
final class WintersCsv {
  private static final double WH_PER_KWH = 1000.0;
  private static final double PERCENT = 100.0;

  private WintersCsv() {}

  static List<String> headers() {
    var headers = new ArrayList<String>(List.of("number", "winter"));
    for (WinterSum sum : WinterSum.values()) {
      headers.add(sum.key() + "_kwh");
    }
    headers.addAll(
        List.of(
            "unmet_hours",
            "unmet_days",
            "generator_hours",
            "generator_starts",
            "longest_shortfall_hours",
            "longest_shortfall_start",
            "lowest_charge_pct",
            "lowest_charge_day",
            "longest_grey_spell_days",
            "deepest_grey_spell_short_kwh",
            "deepest_grey_spell_start",
            "deepest_grey_spell_days",
            "riding_bank_kwh"));
    return headers;
  }

  static String text(WinterBook book) {
    var out = new StringBuilder();
    out.append(String.join(",", headers())).append('\n');
    for (WinterRecord winter : book.winters()) {
      out.append(String.join(",", cells(winter))).append('\n');
    }
    return out.toString();
  }

  private static List<String> cells(WinterRecord w) {
    var cells = new ArrayList<String>();
    cells.add(Integer.toString(w.number() + 1));
    cells.add(w.name());
    for (WinterSum sum : WinterSum.values()) {
      cells.add(kwh(w.wh(sum)));
    }
    cells.add(Integer.toString(w.unmetHours()));
    cells.add(Integer.toString(w.months().unmetDays()));
    cells.add(Integer.toString(w.months().generatorHours()));
    cells.add(Integer.toString(w.generatorStarts()));
    Shortfall longest = w.longestShortfall();
    cells.add(Integer.toString(longest.hours()));
    cells.add(longest.hours() > 0 ? WinterDays.hour(longest.fromHour()) : "");
    cells.add(thousandths(w.lowestShareOfAll() * PERCENT));
    cells.add(WinterDays.day(w.lowestDay()));
    List<GreySpell> spells = w.spells();
    int longestDays = spells.stream().mapToInt(GreySpell::days).max().orElse(0);
    cells.add(Integer.toString(longestDays));
    cells.add(spells.isEmpty() ? "0.000" : kwh(spells.get(0).shortWh()));
    cells.add(spells.isEmpty() ? "" : WinterDays.day(spells.get(0).fromDay()));
    cells.add(spells.isEmpty() ? "0" : Integer.toString(spells.get(0).days()));
    double bankWh = w.ridingBank().leastWh();
    cells.add(bankWh < Double.POSITIVE_INFINITY ? kwh(bankWh) : "");
    return cells;
  }

  private static String kwh(double wh) {
    return thousandths(wh / WH_PER_KWH);
  }

  private static String thousandths(double value) {
    return String.format(Locale.ROOT, "%.3f", value);
  }
}
