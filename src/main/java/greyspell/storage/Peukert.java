package greyspell.storage;

import greyspell.quantity.Check;
import greyspell.storage.TwoTankFit.RatePoint;
import java.util.List;

/**
 * How much less a battery gives when it is drawn fast, as one exponent.
 *
 * <pre>
 * t = H (C / (I H))^n        drawn = I t
 *
 * C  capacity at the rated time          Ah    above 0
 * H  rated time                          h     above 0
 * I  constant current                    A     above 0
 * n  exponent                            1     1 (no loss) to about 1.4
 * t  until empty                         h
 * </pre>
 *
 * For constant currents from full to empty; not for an hourly balance, since it knows neither rest
 * nor changing currents. Here it only checks the points of a data sheet: on a logarithmic chart of
 * time against current they should lie on one line.
 *
 * <p>Source: Peukert (1897), Elektrotechnische Zeitschrift 20 (from memory). Held by
 * TwoTankFitTest.
 *
 * @param capacityAh C
 * @param ratedH H
 * @param peukertExponent n
 */
public record Peukert(double capacityAh, double ratedH, double peukertExponent) {
  /**
   * Farther than this from the line a point is asked about; own choice, no source. The line has no
   * end at slow rates and a battery has, so that sound points lie several per cent off it.
   */
  static final double OFF_SHARE = 0.10;

  public Peukert {
    Check.positive("capacityAh", capacityAh);
    Check.positive("ratedH", ratedH);
    Check.within("peukertExponent", peukertExponent, 0.5, 3.0);
  }

  /** Until empty. */
  public double runH(double currentA) {
    return ratedH * Math.pow(capacityAh / (currentA * ratedH), peukertExponent);
  }

  /** Drawn until empty. */
  public double drawnAh(double currentA) {
    return currentA * runH(currentA);
  }

  /** What it gives when emptied evenly in this time. */
  public double capacityAh(double inH) {
    return capacityAh * Math.pow(inH / ratedH, 1.0 - 1.0 / peukertExponent);
  }

  /**
   * The line through the points with least squares of the logarithms; rated at the last point.
   *
   * @param points two or more, rising in time
   */
  public static Peukert through(List<RatePoint> points) {
    double n = Check.within("points", points.size(), 2, 1000);
    double sumX = 0.0, sumY = 0.0, sumXx = 0.0, sumXy = 0.0;
    for (RatePoint p : points) {
      double x = Math.log(p.inH());
      double y = Math.log(p.capacityAh());
      sumX += x;
      sumY += y;
      sumXx += x * x;
      sumXy += x * y;
    }
    double slope = (n * sumXy - sumX * sumY) / (n * sumXx - sumX * sumX);
    double ratedH = points.get(points.size() - 1).inH();
    double capacityAh = Math.exp((sumY - slope * sumX) / n + slope * Math.log(ratedH));
    return new Peukert(capacityAh, ratedH, 1.0 / (1.0 - slope));
  }

  /** Largest distance of a point from the line, as a share of its capacity. */
  public double worstOffShare(List<RatePoint> points) {
    double worst = 0.0;
    for (RatePoint p : points) {
      double off = Math.abs(p.capacityAh() / capacityAh(p.inH()) - 1.0);
      worst = off > worst ? off : worst;
    }
    return worst;
  }
}
