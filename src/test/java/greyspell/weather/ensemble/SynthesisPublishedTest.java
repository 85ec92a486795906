package greyspell.weather.ensemble;

import greyspell.published.PublishedCheck;
import greyspell.published.PublishedChecks;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;

/**
 * The published parts of made weather. Formulas were seen second-hand, the values of most rows were
 * recomputed from them apart from this code; the textbook's answers are from memory, its statements
 * were seen.
 */
class SynthesisPublishedTest implements PublishedChecks {
  private static final String BOOK = "Duffie and Beckman, Solar Engineering of Thermal Processes, ";
  private static final String BENDT =
      "Bendt, Collares-Pereira and Rabl (1981) with Hollands and Huget (1983), recomputed apart from"
          + " the formulas";
  private static final String TAG =
      "Aguiar and Collares-Pereira (1992), recomputed apart from the formula";
  private static final String ERBS = "Erbs, Klein and Beckman (1983), recomputed apart";
  private static final double FORMULA = 1e-4;
  private static final double MJ_PER_WH = 0.0036;

  private final List<PublishedCheck> checks = new ArrayList<>();

  @Override
  public List<PublishedCheck> checks() {
    double[] mean = {.3, .4, .5, .6, .7};
    double[] highest = {.69139, .73542, .76462, .79150, .81820};
    double[] steepness = {-2.1252, .1863, 2.2720, 4.6209, 8.3725};
    for (int i = 0; i < mean.length; i++) {
      var days = new DailyClearness(mean[i]);
      add(BENDT, "Kmax at Kbar " + mean[i], "1", highest[i], FORMULA, days::highest);
      add(BENDT, "g at Kbar " + mean[i], "1", steepness[i], FORMULA, days::steepness);
    }
    double[][] hours = {{.3, .3, .14347}, {.5, .5, .11505}, {.7, .7, .02863}};
    for (double[] h : hours) {
      add(
          TAG,
          "deviation of an hour, K " + h[0] + ", sin h " + h[1],
          "1",
          h[2],
          1e-5,
          () -> HourSpread.deviation(h[0], h[1]));
    }
    int[] clock = {1, 6, 9, 12, 15, 18, 24};
    double[] shape = {-.2743, -.4513, -.1271, .3396, .5245, .3223, -.2190};
    for (int i = 0; i < clock.length; i++) {
      int t = clock[i];
      add(ERBS, "shape of the day at " + t + " h", "1", shape[i], FORMULA, () -> shape(t));
    }
    int[] sunset = {60, 75, 90, 105, 120};
    double[] sum = {1.0017, .9927, .9917, .9978, 1.0073};
    for (int i = 0; i < sunset.length; i++) {
      double ws = Math.toRadians(sunset[i]);
      add(
          "Gueymard (1986), recomputed apart as the integral of rt",
          "fc at sunset angle " + sunset[i] + " deg",
          "1",
          sum[i],
          FORMULA,
          () -> DayProfile.sum(ws));
    }
    add(
        BOOK + "example 2.13.1 (from memory)",
        "rt, 38 S, January, 8 to 9 h",
        "1",
        .076,
        .0005,
        () -> DayProfile.globalShare(sunset(-38.0, 17), Math.toRadians(-52.5)));
    add(
        BOOK + "example 2.13.2 (from memory)",
        "13 to 14 h, 43 N, 23 August, day 31.4 MJ/m2",
        "MJ/m2",
        3.70,
        .037,
        () -> 31.4 * DayProfile.globalShare(sunset(43.0, 235), Math.toRadians(22.5)));
    tilted();
    return checks;
  }

  private void tilted() {
    double[] level = {1.81, 2.77, 3.92, 4.66, 5.44, 6.28, 6.56, 5.67, 4.51, 2.96, 2.00, 1.56};
    double[] plane = {3.20, 4.07, 4.84, 4.78, 4.99, 5.46, 5.83, 5.59, 5.21, 4.10, 3.35, 2.95};
    var south42 = new TiltedMeans(42.075, 42.0, 180.0, 0.2);
    for (int m = 0; m < 12; m++) {
      int month = m + 1;
      double stated = plane[m];
      add(
          "A satellite climatology of 22 years, level and tilted means seen on a public project page"
              + " (own bar 5 %)",
          "level ground from 42 deg south, 42.1 N, month " + month,
          "kWh/m2",
          level[m],
          0.05 * level[m],
          () -> south42.levelWhm2(month, 1000.0 * stated) / 1000.0);
    }
    double[] levelMj = {
      6.44, 9.89, 12.86, 16.05, 21.36, 23.04, 22.58, 20.33, 14.59, 10.48, 6.37, 5.74
    };
    double[] planeMj = {13.7, 17.2, 15.8, 14.7, 16.6, 16.5, 16.8, 17.5, 15.6, 15.2, 11.4, 12.7};
    double[] ground = {.7, .7, .4, .2, .2, .2, .2, .2, .2, .2, .2, .4};
    for (int m = 0; m < 12; m++) {
      int month = m + 1;
      double mj = levelMj[m];
      var south60 = new TiltedMeans(43.0, 60.0, 180.0, ground[m]);
      add(
          BOOK + "example 2.20.1 (from memory)",
          "60 deg south, 43 N, month " + month,
          "MJ/m2",
          planeMj[m],
          0.1,
          () -> south60.tiltedWhm2(month, mj / MJ_PER_WH) * MJ_PER_WH);
    }
  }

  private static double shape(double solarH) {
    return AirTemperature.shape(solarH);
  }

  private static double sunset(double latitudeDeg, int day) {
    double delta = Math.toRadians(23.45) * Math.sin(2.0 * Math.PI * (284 + day) / 365.0);
    return Math.acos(-Math.tan(Math.toRadians(latitudeDeg)) * Math.tan(delta));
  }

  private void add(
      String source,
      String what,
      String unit,
      double expected,
      double tolerance,
      DoubleSupplier got) {
    checks.add(new PublishedCheck("weather", source, what, unit, expected, tolerance, got));
  }
}
