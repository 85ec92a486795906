package greyspell.weather.ensemble;

import greyspell.calendar.Monthly;
import greyspell.quantity.BadInput;
import greyspell.quantity.Fault;
import greyspell.quantity.FileTrouble;
import greyspell.quantity.Nearest;
import greyspell.quantity.Place;
import greyspell.quantity.Show;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Reads twelve monthly means from a small CSV file:
 *
 * <pre>
 * # place: Mewsand
 * # latitude: 53.2
 * # longitude: 6.1
 * # utc_offset: 1
 * month,global_kwhm2_day,temperature_c
 * 1,0.62,3.4
 * </pre>
 *
 * Instead of {@code global_kwhm2_day} there may be {@code peak_sun_hours} on a plane of which the
 * head says {@code tilt} and {@code azimuth}. All faults are gathered. docs/weather-files.md tells
 * the format.
 */
public final class ClimateFile {
  private static final List<String> KEYS =
      List.of(
          "place", "latitude", "longitude", "elevation", "utc_offset", "tilt", "azimuth", "albedo");
  private static final String MONTH = "month";
  private static final String GLOBAL = "global_kwhm2_day";
  private static final String PEAK = "peak_sun_hours";
  private static final String TEMPERATURE = "temperature_c";
  private static final String SPREAD = "year_spread_pct";
  private static final String SWING = "temperature_swing_k";
  private static final List<String> COLUMNS =
      List.of(MONTH, GLOBAL, PEAK, TEMPERATURE, SPREAD, SWING);
  private static final double WH_PER_KWH = 1000.0;
  private static final double PER_CENT = 0.01;
  private static final int LONGEST = 1 << 16;

  /**
   * What a file holds.
   *
   * @param notes what was taken where the file says nothing
   */
  public record Contents(SiteClimate climate, SynthesisChoices choices, List<String> notes) {}

  /** Grass and bare earth: common practice, no source. */
  private static final double USUAL_ALBEDO = 0.2;

  private final String file;
  private final List<Fault> faults = new ArrayList<>();
  private final Map<String, Double> head = new HashMap<>();
  private final Set<String> statedKeys = new HashSet<>();
  private final Map<String, Integer> columnAt = new HashMap<>();
  private final Map<String, double[]> values = new HashMap<>();
  private final int[] lineOfMonth = new int[YearDays.MONTHS];
  private String place = "";

  private ClimateFile(String file) {
    this.file = file;
  }

  public static Contents read(Path path, String name) {
    try {
      if (Files.size(path) > LONGEST) {
        throw BadInput.of(
            Place.of(name),
            "found a file of " + Files.size(path) + " bytes",
            "must be a small CSV with twelve monthly means",
            "For a file of hours use --like.");
      }
      return new ClimateFile(name).parse(Files.readAllLines(path, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw BadInput.of(
          Place.of(name),
          "cannot be read (" + FileTrouble.words(e) + ")",
          "must be a CSV file with twelve monthly means",
          "Check the spelling; docs/weather-files.md shows such a file.");
    }
  }

  private Contents parse(List<String> lines) {
    boolean hasHeader = false;
    for (int i = 0; i < lines.size(); i++) {
      String line = i == 0 ? lines.get(0).replace("\uFEFF", "") : lines.get(i);
      if (line.isBlank()) {
        continue;
      }
      if (line.startsWith("#")) {
        takeKey(i + 1, line);
      } else if (!hasHeader) {
        hasHeader = true;
        takeHeader(i + 1, line);
      } else {
        takeRow(i + 1, line);
      }
    }
    for (String key : List.of("latitude", "longitude", "utc_offset")) {
      if (!statedKeys.contains(key)) {
        fault(0, 0, "no " + key, "must be stated in a line such as # " + key + ": 1", "");
      }
    }
    if (columnAt.containsKey(PEAK) && !statedKeys.contains("tilt")) {
      fault(
          0,
          0,
          PEAK + " without tilt",
          "must say on which plane, in a line such as # tilt: 60",
          "Write # tilt: 0 for level ground.");
    }
    for (int m = 0; m < YearDays.MONTHS; m++) {
      if (lineOfMonth[m] == 0 && columnAt.containsKey(MONTH)) {
        fault(0, 0, "no row of month " + (m + 1), "must have one row for each month, 1 to 12", "");
      }
    }
    throwIfAny();
    return contents();
  }

  private void takeKey(int line, String text) {
    int colon = text.indexOf(':');
    if (colon < 0) {
      return;
    }
    String key = text.substring(1, colon).strip().toLowerCase(Locale.ROOT);
    String value = text.substring(colon + 1).strip();
    if (!KEYS.contains(key)) {
      String near = Nearest.of(key, KEYS);
      if (near != null) {
        fault(
            line,
            3,
            "unknown key \"" + key + '"',
            "the keys are " + String.join(", ", KEYS),
            "Did you mean " + near + "?");
      }
      return;
    }
    if (!statedKeys.add(key)) {
      fault(line, 3, key + " a second time", "each key once", "Take one of the two out.");
      return;
    }
    if (key.equals("place")) {
      place = value;
      return;
    }
    double low =
        switch (key) {
          case "latitude" -> -ClimateSite.FARTHEST_DEG;
          case "longitude" -> -180.0;
          case "elevation" -> -500.0;
          case "utc_offset" -> -14.0;
          default -> 0.0;
        };
    double high =
        switch (key) {
          case "latitude" -> ClimateSite.FARTHEST_DEG;
          case "longitude" -> 180.0;
          case "elevation" -> 9000.0;
          case "utc_offset" -> 14.0;
          case "tilt" -> 90.0;
          case "azimuth" -> 360.0;
          default -> 1.0;
        };
    Double number = number(line, text.indexOf(value, colon) + 1, key, value, low, high);
    if (number != null) {
      head.put(key, number);
    }
  }

  private void takeHeader(int line, String text) {
    int before = faults.size();
    String[] names = text.split(",", -1);
    for (int c = 0; c < names.length; c++) {
      String name = names[c].strip().toLowerCase(Locale.ROOT);
      if (!COLUMNS.contains(name)) {
        String near = Nearest.of(name, COLUMNS);
        fault(
            line,
            column(text, c),
            "unknown column \"" + name + '"',
            "the columns are " + String.join(", ", COLUMNS),
            near == null ? "" : "Did you mean " + near + "?");
      } else if (columnAt.put(name, c) != null) {
        fault(line, column(text, c), "column " + name + " twice", "must stand once", "");
      } else {
        var column = new double[YearDays.MONTHS];
        Arrays.fill(column, Double.NaN);
        values.put(name, column);
      }
    }
    if (columnAt.containsKey(GLOBAL) == columnAt.containsKey(PEAK)) {
      fault(line, 1, "columns " + text, "must have either " + GLOBAL + " or " + PEAK, "");
    }
    for (String needed : List.of(MONTH, TEMPERATURE)) {
      if (!columnAt.containsKey(needed)) {
        fault(line, 1, "no column " + needed, "must have it", "");
      }
    }
    if (faults.size() > before) {
      throw new BadInput(faults);
    }
  }

  private void takeRow(int line, String text) {
    String[] fields = text.split(",", -1);
    if (fields.length != columnAt.size()) {
      fault(line, 1, fields.length + " fields", "must be " + columnAt.size(), "");
      return;
    }
    Double month = cell(line, text, fields, MONTH, 1.0, YearDays.MONTHS);
    if (month == null) {
      return;
    }
    int m = month.intValue() - 1;
    if (m + 1 != month || lineOfMonth[m] != 0) {
      fault(line, 1, "month " + fields[columnAt.getOrDefault(MONTH, 0)], "must be a new month", "");
      return;
    }
    lineOfMonth[m] = line;
    for (String name : COLUMNS) {
      double[] column = values.get(name);
      if (column == null || name.equals(MONTH)) {
        continue;
      }
      boolean isTemperature = name.equals(TEMPERATURE);
      double high =
          switch (name) {
            case TEMPERATURE -> 50.0;
            case SPREAD -> 60.0;
            default -> 15.0;
          };
      Double value = cell(line, text, fields, name, isTemperature ? -60.0 : 0.0, high);
      column[m] = value == null ? Double.NaN : value;
    }
  }

  private @Nullable Double cell(
      int line, String text, String[] fields, String name, double low, double high) {
    int c = columnAt.getOrDefault(name, 0);
    return number(line, column(text, c), name, fields[c].strip(), low, high);
  }

  private Contents contents() {
    var site =
        new ClimateSite(
            place,
            needed("latitude"),
            needed("longitude"),
            head.get("elevation"),
            needed("utc_offset"));
    double[] stated = values.get(columnAt.containsKey(PEAK) ? PEAK : GLOBAL);
    double[] temperatureC = values.get(TEMPERATURE);
    if (stated == null || temperatureC == null) {
      throw new IllegalStateException("checked above");
    }
    var dailyWhm2 = new double[YearDays.MONTHS];
    for (int month = 1; month <= YearDays.MONTHS; month++) {
      dailyWhm2[month - 1] = level(site, month, stated[month - 1] * WH_PER_KWH);
    }
    throwIfAny();
    var climate = new SiteClimate(site, Monthly.of(dailyWhm2), Monthly.of(temperatureC));
    double[] spread = values.get(SPREAD);
    double[] swing = values.get(SWING);
    var choices = SynthesisChoices.USUAL;
    if (spread != null) {
      double[] fraction = spread.clone();
      for (int m = 0; m < fraction.length; m++) {
        fraction[m] *= PER_CENT;
      }
      choices = choices.withYearSpread(Monthly.of(fraction));
    }
    return new Contents(
        climate,
        swing == null ? choices : choices.withTemperatureSwing(Monthly.of(swing)),
        notes(site));
  }

  private List<String> notes(ClimateSite site) {
    if (!columnAt.containsKey(PEAK) || needed("tilt") == 0.0) {
      return List.of();
    }
    String notSaid = " (not said in the file)";
    return List.of(
        "peak sun hours turned back to level ground from a plane tilted "
            + Show.number(needed("tilt"), 1)
            + " deg, azimuth "
            + Show.number(azimuthDeg(site), 1)
            + " deg"
            + (statedKeys.contains("azimuth") ? "" : notSaid)
            + ", ground albedo "
            + Show.number(of("albedo", USUAL_ALBEDO), 2)
            + (statedKeys.contains("albedo") ? "" : notSaid));
  }

  /** Towards the noon sun where nothing is said. */
  private double azimuthDeg(ClimateSite site) {
    return of("azimuth", site.isNorthern() ? 180.0 : 0.0);
  }

  private double level(ClimateSite site, int month, double statedWhm2) {
    double least = SiteClimate.leastWhm2(site, month);
    double most = SiteClimate.mostWhm2(site, month);
    double levelWhm2 = statedWhm2;
    String name = columnAt.containsKey(PEAK) ? PEAK : GLOBAL;
    if (name.equals(PEAK) && needed("tilt") > 0.0) {
      var plane =
          new TiltedMeans(
              site.latitudeDeg(), needed("tilt"), azimuthDeg(site), of("albedo", USUAL_ALBEDO));
      levelWhm2 =
          statedWhm2 < plane.mostTiltedWhm2(month)
              ? plane.levelWhm2(month, statedWhm2)
              : Double.POSITIVE_INFINITY;
      most = Math.min(most, SiteClimate.mostWhm2(site, month));
    }
    if (!(levelWhm2 >= least && levelWhm2 <= most)) {
      fault(
          lineOfMonth[month - 1],
          1,
          name + ": found " + statedWhm2 / WH_PER_KWH + " in month " + month,
          String.format(
              Locale.ROOT,
              "must bring %.2f to %.2f kWh/m2 a day on level ground at this latitude",
              least / WH_PER_KWH,
              most / WH_PER_KWH),
          "Look at the unit (kWh/m2 a day, not a month) and at the latitude's sign.");
    }
    return levelWhm2;
  }

  private double needed(String key) {
    Double value = head.get(key);
    if (value == null) {
      throw new IllegalStateException(key + ": checked when the head was read");
    }
    return value;
  }

  private double of(String key, double otherwise) {
    Double value = head.get(key);
    return value == null ? otherwise : value;
  }

  private @Nullable Double number(
      int line, int column, String name, String text, double low, double high) {
    boolean isPlain = !text.isEmpty();
    for (int i = 0; i < text.length(); i++) {
      isPlain &= "0123456789+-.".indexOf(text.charAt(i)) >= 0;
    }
    double value = Double.NaN;
    try {
      value = isPlain ? Double.parseDouble(text) : Double.NaN;
    } catch (NumberFormatException e) {
      isPlain = false;
    }
    if (value >= low && value <= high) {
      return value;
    }
    fault(
        line,
        column,
        name + ": found \"" + text + '"',
        "must be a number from " + (int) low + " to " + (int) high,
        "");
    return null;
  }

  private static int column(String text, int field) {
    int at = 0;
    for (int c = 0; c < field; c++) {
      at = text.indexOf(',', at) + 1;
    }
    return at + 1;
  }

  private void fault(int line, int column, String found, String expected, String mend) {
    faults.add(new Fault(new Place(file, line, column), found, expected, mend));
  }

  private void throwIfAny() {
    if (!faults.isEmpty()) {
      throw new BadInput(faults);
    }
  }
}
