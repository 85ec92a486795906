package greyspell.sky;

import greyspell.sky.CloudTable.Row;
import greyspell.sky.CloudTable.Season;
import greyspell.weather.WeatherSeries;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Makes a {@link CloudTable} from weather that has both cloud cover and irradiance.
 *
 * <pre>
 * T(N, h, season) = sum of measured GHI / sum of clear-sky GHI      over the hours nearest to N eighths
 *                                                                   with the sun in the class of h
 * </pre>
 *
 * <p>Ratios of sums, so that energy and not the single hour is met; each point stands at its
 * class's mean height, and three rounds of scaling take out what the straight lines between points
 * miss. A point with fewer than {@value #FEWEST} hours lies on the line between its neighbours; a
 * row with fewer than {@value #FEWEST_OF_ROW} is left out. Cover is taken as the program reads it
 * from the file. The clear sky is {@link SkyChoices#usual}'s. Our own method, no source.
 */
final class CloudFit {
  static final int FEWEST = 30;
  private static final int FEWEST_OF_ROW = 120;
  private static final double[] CLASS_DEG = {0.0, 5.0, 10.0, 20.0, 35.0, 90.0};
  private static final int CLASSES = CLASS_DEG.length - 1;
  private static final int OKTAS = CloudTable.OKTAS + 1;
  private static final int SEASONS = 2;
  private static final int ROUNDS = 3;
  private static final double ROUND = 1000.0;

  /** Not rounded while it is being scaled. */
  private static final double FINE = 1e9;

  /** Which years are looked at: all, or every second one so that the others can judge. */
  enum Years {
    ALL,
    EVEN,
    ODD;

    boolean takes(int year) {
      return this == ALL || (year % 2 == 0) == (this == EVEN);
    }
  }

  private final double[] global;
  private final double[] cloud;
  private final double[] clear;
  private final int[] group;
  private final boolean[] isWinter;
  private final double[] sunDeg;

  private CloudFit(
      double[] global, double[] cloud, WeatherSeries weather, SunPath sun, Site site, Years years) {
    this.global = global;
    this.cloud = cloud;
    clear = CloudlessHours.globalWm2(sun, site.elevationM(), SkyChoices.usual());
    int hours = global.length;
    group = new int[hours];
    isWinter = new boolean[hours];
    sunDeg = new double[hours];
    for (int h = 0; h < hours; h++) {
      sunDeg[h] = 90.0 - sun.zenithDeg()[h];
      isWinter[h] = CloudTable.isWinter(weather.calendar().month(h), site.isNorthern());
      boolean isTaken = years.takes(weather.calendar().year(h));
      group[h] = clear[h] > 0.0 && isTaken ? group(h) : -1;
    }
  }

  private int group(int h) {
    int c = 0;
    while (c < CLASSES - 1 && sunDeg[h] >= CLASS_DEG[c + 1]) {
      c++;
    }
    int okta = (int) Math.rint(cloud[h] * CloudTable.OKTAS);
    return ((isWinter[h] ? 0 : 1) * CLASSES + c) * OKTAS + okta;
  }

  /** Null where the weather lacks irradiance or cloud cover, or is too uniform for a table. */
  static @Nullable CloudTable find(WeatherSeries weather, SunPath sun, Site site, Years years) {
    double[] global = weather.globalHorizontalWm2();
    double[] cloud = weather.cloudShare();
    if (global == null || cloud == null) {
      return null;
    }
    return new CloudFit(global, cloud, weather, sun, site, years).table();
  }

  private @Nullable CloudTable table() {
    int groups = SEASONS * CLASSES * OKTAS;
    var measured = new double[groups];
    var cloudless = new double[groups];
    var hours = new int[groups];
    var degHours = new double[SEASONS * CLASSES];
    var rowHours = new int[SEASONS * CLASSES];
    for (int h = 0; h < group.length; h++) {
      int g = group[h];
      if (g >= 0) {
        measured[g] += global[h];
        cloudless[g] += clear[h];
        hours[g]++;
        degHours[g / OKTAS] += sunDeg[h];
        rowHours[g / OKTAS]++;
      }
    }
    var share = new double[groups];
    for (int g = 0; g < groups; g++) {
      share[g] = hours[g] >= FEWEST ? measured[g] / cloudless[g] : Double.NaN;
    }
    for (int row = 0; row < SEASONS * CLASSES; row++) {
      bridge(share, row * OKTAS);
    }
    CloudTable table = table(share, degHours, rowHours, FINE);
    for (int round = 0; round < ROUNDS && table != null; round++) {
      var told = new double[groups];
      for (int h = 0; h < group.length; h++) {
        if (group[h] >= 0) {
          told[group[h]] += clear[h] * table.clearShare(cloud[h], sunDeg[h], isWinter[h]);
        }
      }
      for (int g = 0; g < groups; g++) {
        if (hours[g] >= FEWEST && told[g] > 0.0) {
          share[g] *= measured[g] / told[g];
        }
      }
      table = table(share, degHours, rowHours, round + 1 < ROUNDS ? FINE : ROUND);
    }
    return table;
  }

  /** Unknown points on straight lines between known ones; at the ends the nearest known. */
  private static void bridge(double[] share, int from) {
    for (int n = 0; n < OKTAS; n++) {
      if (!Double.isNaN(share[from + n])) {
        continue;
      }
      int low = n;
      while (low >= 0 && Double.isNaN(share[from + low])) {
        low--;
      }
      int high = n;
      while (high < OKTAS && Double.isNaN(share[from + high])) {
        high++;
      }
      if (low < 0 && high >= OKTAS) {
        return;
      }
      double left = share[from + (low < 0 ? high : low)];
      double right = share[from + (high >= OKTAS ? low : high)];
      double way = low < 0 || high >= OKTAS ? 0.0 : (n - low) / (double) (high - low);
      share[from + n] = left + way * (right - left);
    }
  }

  private static @Nullable CloudTable table(
      double[] share, double[] degHours, int[] rowHours, double perUnit) {
    var rows = new ArrayList<Row>();
    boolean hasWinter = false;
    boolean hasRest = false;
    for (int row = 0; row < SEASONS * CLASSES; row++) {
      if (rowHours[row] < FEWEST_OF_ROW || Double.isNaN(share[row * OKTAS])) {
        continue;
      }
      List<Double> shares = new ArrayList<>();
      for (int n = 0; n < OKTAS; n++) {
        shares.add(Math.rint(share[row * OKTAS + n] * perUnit) / perUnit);
      }
      boolean isWinterRow = row < CLASSES;
      hasWinter |= isWinterRow;
      hasRest |= !isWinterRow;
      double deg = Math.rint(10.0 * degHours[row] / rowHours[row]) / 10.0;
      rows.add(new Row(isWinterRow ? Season.WINTER : Season.REST, deg, shares));
    }
    return hasWinter && hasRest ? new CloudTable(rows) : null;
  }
}
