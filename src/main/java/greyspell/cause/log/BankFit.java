package greyspell.cause.log;

import greyspell.cause.log.Stretches.Stretch;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.SingularMatrixException;

/**
 * How much the bank really holds, what draws beside the load that was seen, and how much of the
 * charge comes back, from how the charge moved over nights and days.
 *
 * <pre>
 * rise = G / (c C) + drift T,     G = sum over the hours of  n e eta_in (n above 0)  or  n / eta_out (below)
 * n    = solar - draw - x         load not in the log:  n = solar - f draw
 * full to full:  0 = G / (c C)    no drift: the meter has set itself
 *
 * rise   of the charge, as shown            1       c   capacity over the scenario's       1
 * C      content of the bank                Wh      x   always-on draw beside               W
 * T      length                             days    e   charging efficiency over the scenario's, 1 +- 0.03 beforehand
 * drift  of the meter                       1/day   0 +- 0.002 beforehand
 * </pre>
 *
 * Weighted least squares (Gauss-Newton), weight 1 / s^2 with s^2 = 0.01^2 + (0.03 G / C)^2, large
 * rests counted less (Huber 1964, from memory). The spread is that of {@link DayDraws}, with what
 * is taken beforehand drawn anew too, and 1 % for each meter. A meter that counts down from a
 * capacity that was typed in shows nothing of a tired bank; the report says so. Own method, no
 * source.
 *
 * @param capacityFactor c
 * @param alwaysOnW x; not known where the load is not in the log
 * @param drawFactor f; not known where the load is in the log
 * @param chargeFactor e
 * @param driftPerDayShare of the meter
 * @param nights stretches without sun
 */
public record BankFit(
    Estimate capacityFactor,
    Estimate alwaysOnW,
    Estimate drawFactor,
    Estimate chargeFactor,
    Estimate driftPerDayShare,
    int nights) {
  private static final int FEWEST_STRETCHES = 10;
  private static final double FEWEST_TURNS_SHARE = 1.0;
  private static final double PRIOR_CHARGE = 0.03;
  private static final double PRIOR_DRIFT = 0.002;
  private static final double METER_SHARE = 0.01;
  private static final int ROUNDS = 6;
  private static final double LEAST_INVERSE = 0.25;
  private static final double MOST_INVERSE = 4.0;

  static BankFit of(Weeks weeks, boolean isLoadSeen) {
    List<Stretch> stretches = Stretches.of(weeks);
    double turns = 0.0;
    int hours = 0;
    int nights = 0;
    var isDay = new boolean[weeks.days()];
    for (Stretch s : stretches) {
      if (!s.isFullToFull()) {
        turns += Math.abs(s.riseShare());
        hours += s.lengthH();
        isDay[weeks.day(s.from())] = true;
        nights += s.riseShare() < 0.0 ? 1 : 0;
      }
    }
    int days = 0;
    for (boolean is : isDay) {
      days += is ? 1 : 0;
    }
    if (stretches.size() < FEWEST_STRETCHES || turns < FEWEST_TURNS_SHARE) {
      var no =
          Estimate.unknown(
              "the charge moved too little with all flows known: "
                  + stretches.size()
                  + " nights and days, "
                  + Math.round(100.0 * turns)
                  + " % of the bank in all",
              hours,
              days);
      return new BankFit(no, no, no, no, no, nights);
    }
    return new Solver(weeks, stretches, isLoadSeen).fit(hours, days, nights);
  }

  private static final class Solver {
    private final Weeks weeks;
    private final List<Stretch> stretches;
    private final boolean isLoadSeen;
    private final boolean isBatterySeen;

    Solver(Weeks weeks, List<Stretch> stretches, boolean isLoadSeen) {
      this.weeks = weeks;
      this.stretches = stretches;
      this.isLoadSeen = isLoadSeen;
      isBatterySeen = Weeks.isAnyKnown(weeks.of.batteryWh);
    }

    BankFit fit(int hours, int days, int nights) {
      var times = new int[weeks.days()];
      Arrays.fill(times, 1);
      double[] best = solve(times, new double[4]);
      var drawn = new double[4][DayDraws.DRAWS];
      var random = new SplittableRandom(41L);
      for (int draw = 0; draw < DayDraws.DRAWS; draw++) {
        double[] z = new double[4];
        for (int i = 0; i < 4; i++) {
          z[i] = DayDraws.normal(random);
        }
        double[] p = solve(DayDraws.times(weeks.days(), random), z);
        for (int i = 0; i < 4; i++) {
          drawn[i][draw] = p[i];
        }
      }
      if (best[0] <= LEAST_INVERSE || best[0] >= MOST_INVERSE) {
        var no =
            Estimate.unknown(
                "no bank between a quarter and four times the scenario's fits", hours, days);
        return new BankFit(no, no, no, no, no, nights);
      }
      Estimate second = estimate(best[1], drawn[1], hours, days);
      String no = isLoadSeen ? "the load is in the log" : "the load is not in the log";
      return new BankFit(
          estimate(1.0 / best[0], inverse(drawn[0]), hours, days),
          isLoadSeen && !isBatterySeen
              ? second
              : isBatterySeen ? besideBattery(hours, days) : Estimate.unknown(no, hours, days),
          isLoadSeen || isBatterySeen ? Estimate.unknown(no, hours, days) : second,
          estimate(best[2], drawn[2], hours, days),
          estimate(best[3], drawn[3], hours, days),
          nights);
    }

    private static double[] inverse(double[] values) {
      return Arrays.stream(values).map(v -> 1.0 / v).toArray();
    }

    private static Estimate estimate(double value, double[] drawn, int hours, int days) {
      double[] sorted = Arrays.stream(drawn).filter(Double::isFinite).sorted().toArray();
      if (sorted.length < drawn.length / 2 || !Double.isFinite(value)) {
        return Estimate.unknown("no figure fits the nights and days of this log", hours, days);
      }
      int n = sorted.length - 1;
      double spread = 0.5 * (sorted[(int) (0.8413 * n)] - sorted[(int) (0.1587 * n)]);
      return Estimate.of(value, spread, hours, days);
    }

    /** What solar and load leave unexplained of a flow into the bank that was measured. */
    private Estimate besideBattery(int hours, int days) {
      if (!isLoadSeen) {
        return Estimate.unknown("the load is not in the log", hours, days);
      }
      var sum = new double[weeks.days()];
      var count = new int[weeks.days()];
      double mean = 0.0, n = 0.0;
      for (int h = 0; h < weeks.hours; h++) {
        double w = weeks.of.solarWh[h] - weeks.of.drawWh[h] - weeks.of.batteryWh[h];
        if (!Double.isNaN(w) && weeks.isGeneratorOff(h)) {
          sum[weeks.day(h)] += w;
          count[weeks.day(h)]++;
          mean += w;
          n++;
        }
      }
      if (n < 96) {
        return Estimate.unknown("too few hours with solar, load and battery", hours, days);
      }
      double meanDraw = Arrays.stream(weeks.of.drawWh).filter(Double::isFinite).average().orElse(0);
      double spread =
          DayDraws.spread(
              weeks.days(),
              42L,
              (times, r) -> {
                double s = 0.0, c = 0.0;
                for (int d = 0; d < times.length; d++) {
                  s += times[d] * sum[d];
                  c += times[d] * count[d];
                }
                return s / c;
              });
      return Estimate.of(mean / n, Math.hypot(spread, 1.7 * METER_SHARE * meanDraw), (int) n, days);
    }

    /**
     * 1 / c, x or f, e, drift.
     *
     * @param z by how many standard deviations what is taken beforehand is moved: charging, drift,
     *     solar meter, load meter
     */
    private double[] solve(int[] times, double[] z) {
      double solarGain = 1.0 + METER_SHARE * z[2];
      double loadGain = 1.0 + METER_SHARE * z[3];
      double[] p = {1.0, isLoadSeen ? 0.0 : 1.0, 1.0, 0.0};
      var priorMean = new double[] {1.0, p[1], 1.0 + PRIOR_CHARGE * z[0], PRIOR_DRIFT * z[1]};
      var priorSpread =
          new double[] {
            10.0, isBatterySeen ? 1e-6 : isLoadSeen ? 1000.0 : 3.0, PRIOR_CHARGE, PRIOR_DRIFT
          };
      var rest = new double[stretches.size()];
      for (int round = 0; round < ROUNDS; round++) {
        double limit = round == 0 ? Double.POSITIVE_INFINITY : 2.5 * middle(rest);
        var a = new double[4][4];
        var b = new double[4];
        for (int i = 0; i < 4; i++) {
          double weight = 1.0 / (priorSpread[i] * priorSpread[i]);
          a[i][i] += weight;
          b[i] += weight * (priorMean[i] - p[i]);
        }
        for (int k = 0; k < rest.length; k++) {
          rest[k] = add(stretches.get(k), p, times, solarGain, loadGain, limit, a, b);
        }
        try {
          double[] step =
              new LUDecomposition(new Array2DRowRealMatrix(a, false))
                  .getSolver()
                  .solve(new ArrayRealVector(b, false))
                  .toArray();
          for (int i = 0; i < 4; i++) {
            p[i] += step[i];
          }
          p[0] = Math.max(LEAST_INVERSE, Math.min(MOST_INVERSE, p[0]));
        } catch (SingularMatrixException e) {
          return new double[] {Double.NaN, Double.NaN, Double.NaN, Double.NaN};
        }
      }
      return p;
    }

    private static double middle(double[] rest) {
      double[] sorted = Arrays.stream(rest).map(Math::abs).sorted().toArray();
      return Math.max(0.5, 1.48 * sorted[sorted.length / 2]);
    }

    /** Adds one stretch to the normal equations; returns its rest over its own spread. */
    private double add(
        Stretch s,
        double[] p,
        int[] times,
        double solarGain,
        double loadGain,
        double limit,
        double[][] a,
        double[] b) {
      Weeks.Columns of = weeks.of;
      double gWh = 0.0, byDraw = 0.0, byChargeWh = 0.0;
      for (int h = s.from(); h < s.to(); h++) {
        double draw = of.drawWh[h] * loadGain;
        double n =
            Double.isNaN(of.batteryWh[h])
                ? of.solarWh[h] * solarGain - (isLoadSeen ? draw + p[1] : p[1] * draw)
                : of.batteryWh[h] * solarGain;
        double slope = isLoadSeen ? 1.0 : draw;
        if (n > 0.0) {
          gWh += n * p[2] * of.chargeEfficiency;
          byDraw -= slope * p[2] * of.chargeEfficiency;
          byChargeWh += n * of.chargeEfficiency;
        } else {
          gWh += n / of.dischargeEfficiency;
          byDraw -= slope / of.dischargeEfficiency;
        }
      }
      double g = gWh / of.contentWh;
      double spread = Math.hypot(0.01, 0.03 * g);
      double lengthD = s.isFullToFull() ? 0.0 : s.lengthH() / 24.0;
      double rest = (s.riseShare() - p[0] * g - p[3] * lengthD) / spread;
      double[] j = {
        g / spread,
        p[0] * byDraw / of.contentWh / spread,
        p[0] * byChargeWh / of.contentWh / spread,
        lengthD / spread
      };
      double weight = times[weeks.day(s.from())];
      if (Math.abs(rest) > limit) {
        weight *= limit / Math.abs(rest);
      }
      for (int r = 0; r < 4; r++) {
        for (int c = 0; c < 4; c++) {
          a[r][c] += weight * j[r] * j[c];
        }
        b[r] += weight * j[r] * rest;
      }
      return rest;
    }
  }
}
