package greyspell.report;

import greyspell.chart.LogPicture;
import greyspell.chart.Picture;
import greyspell.chart.Pictures;
import greyspell.quantity.Show;
import greyspell.study.LogDay;
import greyspell.study.LogStudy;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/** Writes what a log says into a folder: text, JSON, the days, and the picture as SVG and PNG. */
public final class LogFiles {
  private static final double WH_PER_KWH = 1000.0;
  private static final String HEAD =
      "date,seen_solar_kwh,expected_solar_kwh,fitted_solar_kwh,free_hours,free_seen_solar_kwh,"
          + "free_expected_solar_kwh,seen_load_kwh,expected_load_kwh,seen_charge_pct,"
          + "expected_charge_pct,fitted_charge_pct\n";

  private LogFiles() {}

  public static List<Path> write(LogStudy study, Path dir) throws IOException {
    try (var deliver = new Deliver(dir)) {
      text(deliver, "compare.txt", LogText.of(study));
      text(deliver, "compare.json", LogJson.text(study));
      for (String name : List.of("compare-days.csv", "compare.svg", "compare.png")) {
        deliver.supersede(name);
      }
      if (study.hasWeather()) {
        text(deliver, "compare-days.csv", days(study.days()));
        Picture picture = LogPicture.of(study);
        text(deliver, "compare.svg", Pictures.svg(picture));
        try {
          deliver.write("compare.png", Pictures.png(picture));
        } catch (Pictures.NoFonts e) {
          return deliver.done(); // the SVG is whole; the command says why there is no PNG
        }
      }
      return deliver.done();
    }
  }

  private static void text(Deliver deliver, String name, String words) {
    deliver.write(name, words.getBytes(StandardCharsets.UTF_8));
  }

  static String days(List<LogDay> days) {
    var out = new StringBuilder(HEAD);
    for (LogDay d : days) {
      out.append(d.date());
      cell(out, d.seenSolarWh() / WH_PER_KWH, 3);
      cell(out, d.expectedSolarWh() / WH_PER_KWH, 3);
      cell(out, d.fittedSolarWh() / WH_PER_KWH, 3);
      out.append(',').append(d.freeHours());
      cell(out, d.freeSeenWh() / WH_PER_KWH, 3);
      cell(out, d.freeExpectedWh() / WH_PER_KWH, 3);
      cell(out, d.seenLoadWh() / WH_PER_KWH, 3);
      cell(out, d.expectedLoadWh() / WH_PER_KWH, 3);
      cell(out, 100.0 * d.seenChargeShare(), 1);
      cell(out, 100.0 * d.expectedChargeShare(), 1);
      cell(out, 100.0 * d.fittedChargeShare(), 1);
      out.append('\n');
    }
    return out.toString();
  }

  /** Blank where it is not known. */
  private static void cell(StringBuilder out, double value, int decimals) {
    out.append(',').append(Double.isNaN(value) ? "" : Show.number(value, decimals));
  }
}
