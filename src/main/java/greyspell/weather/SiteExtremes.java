package greyspell.weather;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The coldest and hottest air that a weather file itself states for its place: the 50-year extremes
 * in the design conditions of an EPW header. After the word {@code Extremes} stand sixteen figures;
 * the last two are the lowest and the highest dry-bulb temperature to be expected once in 50 years.
 * Source: the handbook's climatic design conditions that such headers quote (order of the fields
 * from memory; looked at in three files, whose figures rise with the return period as they should).
 *
 * @param lowC once in 50 years
 * @param highC once in 50 years
 */
public record SiteExtremes(double lowC, double highC) {
  private static final String MARK = "Extremes";
  private static final int FIGURES = 16;
  private static final int FIRST_YEARLY = 4;
  private static final int LONGEST_LINE = 1 << 16;

  /** Null where the file is no EPW, states none, or states what cannot be. */
  public static @Nullable SiteExtremes find(Path file) {
    try (var reader =
        new BufferedReader(
            new InputStreamReader(Files.newInputStream(file), StandardCharsets.ISO_8859_1),
            1 << 12)) {
      var start = new char[8];
      reader.mark(LONGEST_LINE);
      if (reader.read(start) != start.length || !new String(start).equals("LOCATION")) {
        return null;
      }
      reader.readLine();
      String design = reader.readLine();
      return design == null ? null : parse(design);
    } catch (IOException e) {
      return null; // whoever reads the weather itself says what is wrong with the file
    }
  }

  static @Nullable SiteExtremes parse(String designConditions) {
    List<String> fields = List.of(designConditions.split(",", -1));
    int mark = fields.indexOf(MARK);
    if (mark < 0 || fields.size() < mark + 1 + FIGURES) {
      return null;
    }
    var figure = new double[FIGURES];
    for (int i = 0; i < FIGURES; i++) {
      try {
        figure[i] = Double.parseDouble(fields.get(mark + 1 + i).strip());
      } catch (NumberFormatException e) {
        return null;
      }
    }
    double meanLowC = figure[FIRST_YEARLY], meanHighC = figure[FIRST_YEARLY + 1];
    double lowC = figure[FIGURES - 2], highC = figure[FIGURES - 1];
    boolean isSound =
        lowC >= -90.0
            && lowC <= meanLowC
            && meanLowC < meanHighC
            && meanHighC <= highC
            && highC <= 60.0;
    return isSound ? new SiteExtremes(lowC, highC) : null;
  }
}
