package greyspell.storage;

import greyspell.quantity.Check;
import greyspell.quantity.Show;
import greyspell.storage.step.TwoTank;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;

/**
 * The two tanks of a battery from the capacities that its data sheet states for several discharge
 * times.
 *
 * <pre>
 * C(t) = qmax k c t / [1 - E + c (k t - 1 + E)],     E = exp(-k t)
 *
 * C(t)  given when emptied evenly in the time t       Ah       c qmax (at once) to qmax (slowly)
 * t     time                                          h        above 0
 * qmax  both tanks                                    Ah
 * c     width of the first tank                       1        0 .. 1
 * k     rate constant                                 1/h      above 0
 * </pre>
 *
 * Three points or more give all three by least squares of the logarithms; two give k and qmax, with
 * the usual c of the chemistry; one or none gives qmax alone. What the points miss the fitted curve
 * by is told, and so is how far they lie from a line of {@link Peukert}, where a misprint shows.
 *
 * <p>Source: the equation is that of {@link TwoTank} solved for a battery that starts full. Held by
 * TwoTankFitTest.
 *
 * @param availableShare c
 * @param exchangePerH k
 * @param tanksAh qmax
 * @param worstMissShare farthest point from the fitted curve
 * @param cautions what to ask about the points; empty if nothing
 */
public record TwoTankFit(
    double availableShare,
    double exchangePerH,
    double tanksAh,
    double worstMissShare,
    List<String> cautions) {
  // Wider than this the curve does not follow the sheet; own choice, no source.
  private static final double MISS_SHARE = 0.05;
  private static final double LEAST_SHARE = 0.02;
  private static final double MOST_SHARE = 0.98;
  private static final double LEAST_PER_H = 1e-3;
  private static final double MOST_PER_H = 50.0;

  public TwoTankFit {
    Check.within("availableShare", availableShare, Double.MIN_VALUE, 1.0);
    Check.positive("exchangePerH", exchangePerH);
    Check.positive("tanksAh", tanksAh);
    Check.notNegative("worstMissShare", worstMissShare);
    cautions = List.copyOf(cautions);
  }

  /** One line of a sheet: emptied evenly in so many hours it gives so much. */
  public record RatePoint(double inH, double capacityAh) {
    public RatePoint {
      Check.within("inH", inH, 1e-3, 10_000.0);
      Check.positive("capacityAh", capacityAh);
    }
  }

  /** Share of both tanks that an even draw in this time gives, from full. */
  public static double givenShare(double availableShare, double exchangePerH, double inH) {
    double kt = exchangePerH * inH;
    double gone = -Math.expm1(-kt);
    double beyond = kt < 1e-4 ? kt * kt * (0.5 - kt / 6.0) : kt - gone;
    return kt * availableShare / (gone + availableShare * beyond);
  }

  /**
   * Fits what the points allow.
   *
   * @param points rising in time, capacity never falling
   * @param usual what is taken for that which the points do not tell
   */
  public static TwoTankFit of(List<RatePoint> points, TwoTank usual) {
    Check.within("points", points.size(), 1, 100);
    for (int i = 1; i < points.size(); i++) {
      Check.within(
          "inH of a point", points.get(i).inH(), Math.nextUp(points.get(i - 1).inH()), 10_000.0);
      Check.within(
          "capacityAh of a point",
          points.get(i).capacityAh(),
          points.get(i - 1).capacityAh(),
          Double.MAX_VALUE);
    }
    double c = usual.availableShare();
    double k = usual.exchangePerH();
    if (points.size() > 1) {
      double[] solved = solve(points, c, k, points.size() > 2);
      k = perH(solved[0]);
      c = points.size() > 2 ? share(solved[1]) : c;
    }
    double tanksAh = tanksAh(points, c, k);
    double worst = 0.0;
    for (RatePoint p : points) {
      double off = Math.abs(tanksAh * givenShare(c, k, p.inH()) / p.capacityAh() - 1.0);
      worst = off > worst ? off : worst;
    }
    return new TwoTankFit(c, k, tanksAh, worst, cautions(points, worst));
  }

  private static List<String> cautions(List<RatePoint> points, double worst) {
    var cautions = new ArrayList<String>();
    if (worst > MISS_SHARE) {
      cautions.add(
          "The capacities by discharge time lie up to "
              + Show.percent(worst)
              + " off the two tanks fitted to them: is one of them misread?");
    }
    if (points.size() > 2) {
      var peukert = Peukert.through(points);
      double off = peukert.worstOffShare(points);
      if (off > Peukert.OFF_SHARE) {
        cautions.add(
            "The capacities by discharge time do not lie on one Peukert line (exponent "
                + Show.number(peukert.exponent(), 2)
                + ", up to "
                + Show.percent(off)
                + " off): is one of them misread?");
      }
    }
    return cautions;
  }

  /** The size at which the curve lies amid the points: mean of the logarithms. */
  private static double tanksAh(List<RatePoint> points, double c, double k) {
    double sum = 0.0;
    for (RatePoint p : points) {
      sum += Math.log(p.capacityAh() / givenShare(c, k, p.inH()));
    }
    return Math.exp(sum / points.size());
  }

  // Both bounded by a sigmoid, so that no step of the search can leave what is possible.
  private static double share(double free) {
    return LEAST_SHARE + (MOST_SHARE - LEAST_SHARE) / (1.0 + Math.exp(-free));
  }

  private static double perH(double free) {
    double low = Math.log(LEAST_PER_H);
    return Math.exp(low + (Math.log(MOST_PER_H) - low) / (1.0 + Math.exp(-free)));
  }

  private static double freeOf(double value, double low, double high) {
    double part = (value - low) / (high - low);
    return Math.log(part / (1.0 - part));
  }

  private static double[] solve(List<RatePoint> points, double c, double k, boolean isShareFree) {
    double low = Math.log(LEAST_PER_H);
    double startK = freeOf(Math.log(k), low, Math.log(MOST_PER_H));
    double startC = freeOf(c, LEAST_SHARE, MOST_SHARE);
    double[] start = isShareFree ? new double[] {startK, startC} : new double[] {startK};
    LeastSquaresOptimizer.Optimum best =
        new LevenbergMarquardtOptimizer()
            .optimize(
                new LeastSquaresBuilder()
                    .start(start)
                    .target(new double[points.size()])
                    .model(free -> valueAndSlopes(points, c, free))
                    .maxEvaluations(2000)
                    .maxIterations(2000)
                    .build());
    return best.getPoint().toArray();
  }

  private static Pair<RealVector, RealMatrix> valueAndSlopes(
      List<RatePoint> points, double usualC, RealVector free) {
    double[] at = free.toArray();
    double[] value = misses(points, usualC, at);
    var slopes = new Array2DRowRealMatrix(value.length, at.length);
    double step = 1e-6;
    for (int j = 0; j < at.length; j++) {
      double[] up = at.clone();
      double[] down = at.clone();
      up[j] += step;
      down[j] -= step;
      double[] above = misses(points, usualC, up);
      double[] below = misses(points, usualC, down);
      for (int i = 0; i < value.length; i++) {
        slopes.setEntry(i, j, (above[i] - below[i]) / (2.0 * step));
      }
    }
    return new Pair<>(new ArrayRealVector(value, false), slopes);
  }

  private static double[] misses(List<RatePoint> points, double usualC, double[] free) {
    double k = perH(free[0]);
    double c = free.length > 1 ? share(free[1]) : usualC;
    double logSize = Math.log(tanksAh(points, c, k));
    var misses = new double[points.size()];
    for (int i = 0; i < misses.length; i++) {
      RatePoint p = points.get(i);
      misses[i] = logSize + Math.log(givenShare(c, k, p.inH()) / p.capacityAh());
    }
    return misses;
  }
}
