package greyspell.report;

import greyspell.quantity.Show;
import greyspell.sky.CloudCalibration;
import greyspell.sky.CloudErrors;
import greyspell.sky.CloudTable;
import greyspell.weather.WeatherSeries;
import java.util.Locale;

/** A cloud table as a block of a scenario, with its worth in remarks above it. */
public final class CloudTableText {
  private CloudTableText() {}

  public static String of(WeatherSeries weather, CloudCalibration found) {
    var out = new StringBuilder();
    out.append("# cloud table from ").append(weather.source().file());
    var calendar = weather.calendar();
    if (calendar.isTypical()) {
      out.append(", a typical year");
    } else {
      out.append(", ").append(calendar.firstYear());
      if (calendar.years() > 1) {
        out.append(" to ").append(calendar.firstYear() + calendar.years() - 1);
      }
    }
    out.append("\n# light worked out from cloud, against the light of the file itself:\n");
    out.append("#").append(" ".repeat(33));
    row("year", "dark four", "months", "days", out);
    line("classic curve", found.classic(), out);
    line("table that comes with greyspell", found.builtIn(), out);
    CloudErrors others = found.onOtherYears();
    if (others == null) {
      out.append(
          "# this table was fitted on all there is: what it is worth elsewhere is not known\n");
    } else {
      line("such a table, on other years", others, out);
    }
    out.append(
        "# year, dark four months: sum against sum; months, days: root mean square of the error\n");
    out.append(
        "# against the mean. Fit for cloud cover observed in the same manner, in the same climate.\n");
    out.append("sky:\n  clear_sky: ineichen_perez\n  turbidity: 3\n  cloud: table\n");
    out.append("  cloud_table:\n");
    for (CloudTable.Row row : found.table().rows()) {
      out.append("    - season: ").append(row.season().name().toLowerCase(Locale.ROOT));
      out.append("\n      sun: ").append(Show.trimmed(row.sunDeg(), 1)).append(" deg\n");
      out.append("      shares: [");
      for (int okta = 0; okta <= CloudTable.OKTAS; okta++) {
        out.append(okta == 0 ? "[" : ", [").append(okta).append(", ");
        out.append(Show.trimmed(row.shares().get(okta), 3)).append(']');
      }
      out.append("]\n");
    }
    return out.toString();
  }

  private static void line(String name, CloudErrors errors, StringBuilder out) {
    out.append("# ").append(name).append(" ".repeat(Math.max(1, 32 - name.length())));
    row(
        signed(errors.yearShare()),
        signed(errors.winterShare()),
        percent(errors.monthsShare()),
        percent(errors.daysShare()),
        out);
  }

  private static void row(
      String year, String winter, String months, String days, StringBuilder out) {
    cell(year, 9, out);
    cell(winter, 11, out);
    cell(months, 9, out);
    cell(days, 9, out);
    out.append('\n');
  }

  private static void cell(String text, int width, StringBuilder out) {
    out.append(" ".repeat(Math.max(1, width - text.length()))).append(text);
  }

  private static String signed(double share) {
    return (share >= 0.0 ? "+" : "") + percent(share);
  }

  private static String percent(double share) {
    return Show.number(100.0 * share, 1) + " %";
  }
}
