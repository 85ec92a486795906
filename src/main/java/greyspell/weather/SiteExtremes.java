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
 * in the design conditions of an EPW header.
 *
 * <p>After the word {@code Extremes} stand the lowest and highest dry-bulb temperature of a mean
 * year, their two standard deviations, and then a pair each to be expected once in 5, 10, 20 and 50
 * years. Four figures go before the first pair in headers of one age, three in those of another;
 * the pairs are taken where they spread with the years as they must, and nothing is taken where
 * they do so nowhere or in both places. They are estimates from some decades of readings: an old
 * record may lie beyond them.
 *
 * <p>Source: the handbook's climatic design conditions that such headers quote (order of the fields
 * from memory; looked at in seven headers of 2009 and one of 2017). Held by SiteExtremesTest.
 *
 * @param lowC once in 50 years
 * @param highC once in 50 years
 * @param place as the header names it, may be empty
 */
public record SiteExtremes(
    double lowC,
    double highC,
    String place,
    double latitudeDeg,
    double longitudeDeg,
    double elevationM) {
  private static final String MARK = "Extremes";
  private static final int[] BEFORE_FIRST_PAIR = {4, 3};
  private static final int[] PAIRS = {0, 4, 6, 8, 10};
  private static final int FIFTY_YEARS = 10;
  private static final int LATITUDE = 6;
  private static final int LONGITUDE = 7;
  private static final int ELEVATION = 9;

  /** Null where the file is no EPW, states none, or states what cannot be. */
  public static @Nullable SiteExtremes find(Path file) {
    try (var reader =
        new BufferedReader(
            new InputStreamReader(Files.newInputStream(file), StandardCharsets.ISO_8859_1),
            1 << 12)) {
      var start = new char[8];
      if (reader.read(start) != start.length || !new String(start).equals("LOCATION")) {
        return null;
      }
      String location = reader.readLine();
      String design = reader.readLine();
      return location == null || design == null ? null : parse("LOCATION" + location, design);
    } catch (IOException e) {
      return null; // whoever reads the weather itself says what is wrong with the file
    }
  }

  static @Nullable SiteExtremes parse(String location, String designConditions) {
    List<String> where = List.of(location.split(",", -1));
    List<String> fields = List.of(designConditions.split(",", -1));
    int mark = fields.indexOf(MARK);
    if (mark < 0 || where.size() <= ELEVATION) {
      return null;
    }
    int found = -1;
    for (int before : BEFORE_FIRST_PAIR) {
      if (spreads(fields, mark + 1 + before)) {
        if (found >= 0) {
          return null;
        }
        found = mark + 1 + before;
      }
    }
    double latitudeDeg = number(where, LATITUDE);
    double longitudeDeg = number(where, LONGITUDE);
    double elevationM = number(where, ELEVATION);
    if (found < 0 || Double.isNaN(latitudeDeg + longitudeDeg + elevationM)) {
      return null;
    }
    return new SiteExtremes(
        number(fields, found + FIFTY_YEARS),
        number(fields, found + FIFTY_YEARS + 1),
        where.get(1).strip(),
        latitudeDeg,
        longitudeDeg,
        elevationM);
  }

  /** Whether pairs stand here: each lower and higher than the one before it, in possible air. */
  private static boolean spreads(List<String> fields, int first) {
    double lowC = number(fields, first);
    double highC = number(fields, first + 1);
    boolean isSound =
        lowC < highC && number(fields, first + 2) >= 0.0 && number(fields, first + 3) >= 0.0;
    for (int pair : PAIRS) {
      double nextLowC = number(fields, first + pair);
      double nextHighC = number(fields, first + pair + 1);
      isSound &= nextLowC <= lowC && nextHighC >= highC;
      lowC = nextLowC;
      highC = nextHighC;
    }
    return isSound && lowC >= -90.0 && highC <= 60.0;
  }

  /** NaN where there is none, so that no comparison holds. */
  private static double number(List<String> fields, int at) {
    if (at >= fields.size()) {
      return Double.NaN;
    }
    try {
      return Double.parseDouble(fields.get(at).strip());
    } catch (NumberFormatException e) {
      return Double.NaN;
    }
  }
}
