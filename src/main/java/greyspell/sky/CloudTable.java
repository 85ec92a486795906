package greyspell.sky;

import greyspell.quantity.Check;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How much of the clear-sky light a cover of cloud leaves, as measured: a table by eighths, height
 * of the sun and season, straight lines between its points.
 *
 * <pre>
 * GHI / GHIclear = T(N, h, season)
 *
 * N   cover in eighths (okta)                1     0 .. 8
 * h   height of the sun                      deg   outside the rows the nearest row holds
 * winter   November to February; in the south May to August; the rest of the year is the other season
 * </pre>
 *
 * <p>{@link #lowland} is our own fit ({@link CloudFit}) on ten measured years, 2011 to 2020, of one
 * lowland station at 52 degrees north (Royal Netherlands Meteorological Institute, CC BY 4.0;
 * global irradiance and automatic observations of total cover). It is to be multiplied with {@link
 * IneichenPerezClearSky} at turbidity 3 and nothing else: near the horizon that sky is too dark,
 * and the table makes up for it. On a station 140 km off, that it was not fitted on, it is held
 * against the classic curve in CloudTableTest; the figures stand in docs/weather-files.md.
 */
public final class CloudTable {
  public static final int OKTAS = 8;
  private static final double MOST = 4.0;

  /** Which part of the year a row is for. */
  public enum Season {
    ALL,
    WINTER,
    REST
  }

  /**
   * One row.
   *
   * @param sunDeg height of the sun
   * @param shares of the clear-sky light, at 0 to 8 eighths; near the horizon above 1
   */
  public record Row(Season season, double sunDeg, List<Double> shares) {
    public Row {
      Check.within("sunDeg", sunDeg, 0.0, 90.0);
      if (shares.size() != OKTAS + 1) {
        throw new IllegalArgumentException("shares: " + shares.size() + ", must be 9");
      }
      for (double share : shares) {
        Check.within("share", share, 0.0, MOST);
      }
      shares = List.copyOf(shares);
    }
  }

  private final List<Row> rows;
  private final double[] winterDeg;
  private final double[] winter;
  private final double[] restDeg;
  private final double[] rest;

  public CloudTable(List<Row> rows) {
    this.rows = List.copyOf(rows);
    List<Row> inWinter = of(Season.WINTER);
    List<Row> inRest = of(Season.REST);
    winterDeg = heights(inWinter);
    winter = shares(inWinter);
    restDeg = heights(inRest);
    rest = shares(inRest);
  }

  /** The fit that comes with the program; for the clear sky of {@link SkyChoices#usual}. */
  public static CloudTable lowland() {
    return new CloudTable(
        List.of(
            row(Season.WINTER, 2.2, 2.999, 2.336, 2.342, 2.558, 2.402, 2.201, 1.953, 2.143, 1.06),
            row(Season.WINTER, 7.4, 1.196, 0.987, 0.98, 0.953, 1.051, 0.909, 0.91, 0.704, 0.401),
            row(Season.WINTER, 14.6, 1.083, 1.023, 1.005, 0.884, 0.847, 0.9, 0.854, 0.699, 0.372),
            row(Season.WINTER, 23.4, 1.047, 0.977, 0.949, 0.929, 0.877, 0.771, 0.795, 0.688, 0.385),
            row(Season.REST, 2.3, 2.55, 2.316, 2.424, 2.28, 2.217, 2.202, 2.135, 1.919, 1.329),
            row(Season.REST, 7.6, 1.117, 1.033, 0.909, 0.97, 0.9, 0.928, 0.893, 0.747, 0.488),
            row(Season.REST, 15.2, 0.989, 0.911, 0.905, 0.865, 0.845, 0.786, 0.799, 0.669, 0.436),
            row(Season.REST, 27.8, 0.992, 0.932, 0.886, 0.884, 0.816, 0.813, 0.764, 0.66, 0.437),
            row(Season.REST, 47.1, 0.99, 0.951, 0.911, 0.866, 0.851, 0.808, 0.754, 0.67, 0.455)));
  }

  private static Row row(Season season, double sunDeg, Double... shares) {
    return new Row(season, sunDeg, List.of(shares));
  }

  public List<Row> rows() {
    return rows;
  }

  private List<Row> of(Season season) {
    var some = new ArrayList<Row>();
    for (Row row : rows) {
      if (row.season() == season || row.season() == Season.ALL) {
        some.add(row);
      }
    }
    if (some.isEmpty()) {
      throw new IllegalArgumentException(
          "no row for " + (season == Season.WINTER ? "winter" : "the rest of the year"));
    }
    some.sort(Comparator.comparingDouble(Row::sunDeg));
    for (int i = 1; i < some.size(); i++) {
      if (some.get(i).sunDeg() == some.get(i - 1).sunDeg()) {
        throw new IllegalArgumentException(
            "two rows for the sun at " + some.get(i).sunDeg() + " deg in one season");
      }
    }
    return some;
  }

  private static double[] heights(List<Row> rows) {
    var deg = new double[rows.size()];
    for (int i = 0; i < deg.length; i++) {
      deg[i] = rows.get(i).sunDeg();
    }
    return deg;
  }

  private static double[] shares(List<Row> rows) {
    var all = new double[rows.size() * (OKTAS + 1)];
    for (int i = 0; i < all.length; i++) {
      all[i] = rows.get(i / (OKTAS + 1)).shares().get(i % (OKTAS + 1));
    }
    return all;
  }

  static boolean isWinter(int month, boolean isNorthern) {
    return isNorthern ? month >= 11 || month <= 2 : month >= 5 && month <= 8;
  }

  /** Share of the clear light that is left. */
  double clearShare(double cloudShare, double sunDeg, boolean isWinter) {
    double[] deg = isWinter ? winterDeg : restDeg;
    double[] shares = isWinter ? winter : rest;
    int i = 0;
    while (i < deg.length - 2 && deg[i + 1] < sunDeg) {
      i++;
    }
    double okta = cloudShare * OKTAS;
    int n = okta < OKTAS ? (int) okta : OKTAS - 1;
    double part = okta - n;
    double low = between(shares, i, n, part);
    if (deg.length == 1 || sunDeg <= deg[i]) {
      return low;
    }
    double high = between(shares, i + 1, n, part);
    double way = (sunDeg - deg[i]) / (deg[i + 1] - deg[i]);
    return way < 1.0 ? low + way * (high - low) : high;
  }

  private static double between(double[] shares, int row, int okta, double part) {
    int at = row * (OKTAS + 1) + okta;
    return shares[at] + part * (shares[at + 1] - shares[at]);
  }
}
