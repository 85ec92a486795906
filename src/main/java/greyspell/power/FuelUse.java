package greyspell.power;

import greyspell.quantity.Unit;
import org.jspecify.annotations.Nullable;

/**
 * What a generator burnt, read from the hours in which it ran.
 *
 * <pre>
 * litres = s rate(E / s)
 *
 * s  share of the hour that it ran      1     0 .. 1
 * E  AC energy that it gave             Wh    0 ..
 * rate  fuel at a steady power          l/h   as in GeneratorSpec
 * </pre>
 *
 * Within its share of an hour the load is taken as even; an uneven load burns the same on a
 * straight line. A start is an hour in which it runs after one in which it did not. Held by
 * FuelUseTest and GeneratorLawTest.
 */
public final class FuelUse {
  private final Fuel fuel;
  private final double[] litresL;
  private final double[] onShare;

  private FuelUse(Fuel fuel, double[] litresL, double[] onShare) {
    this.fuel = fuel;
    this.litresL = litresL;
    this.onShare = onShare;
  }

  /**
   * Reads the hours of a run.
   *
   * @param generatorWh AC energy that it gave in each hour
   * @param onShare share of each hour that it ran; above 0 wherever it gave energy
   */
  public static FuelUse of(GeneratorSpec spec, double[] generatorWh, double[] onShare) {
    if (generatorWh.length != onShare.length) {
      throw new IllegalArgumentException(
          generatorWh.length + " hours of energy, " + onShare.length + " of running");
    }
    var litresL = new double[onShare.length];
    for (int h = 0; h < litresL.length; h++) {
      double s = onShare[h];
      if (s > 0.0) {
        litresL[h] = s * spec.fuelLPerH(generatorWh[h] / s);
      } else if (generatorWh[h] > 0.0) {
        throw new IllegalArgumentException("energy without running in hour " + h);
      }
    }
    return new FuelUse(spec.fuel(), litresL, onShare);
  }

  /** Burnt in each hour. */
  public double[] litresL() {
    return litresL;
  }

  public double totalL() {
    return totalL(0, litresL.length);
  }

  /** From an hour to before another. */
  public double totalL(int from, int to) {
    double sum = 0.0;
    for (int h = from; h < to; h++) {
      sum += litresL[h];
    }
    return sum;
  }

  /** Hours that it ran. */
  public double runningH() {
    return runningH(0, onShare.length);
  }

  /** Hours that it ran from an hour to before another. */
  public double runningH(int from, int to) {
    double sum = 0.0;
    for (int h = from; h < to; h++) {
      sum += onShare[h];
    }
    return sum;
  }

  public int starts() {
    return starts(0, onShare.length);
  }

  /** Starts from an hour to before another; a run that began before is not counted. */
  public int starts(int from, int to) {
    int starts = 0;
    for (int h = from; h < to; h++) {
      if (onShare[h] > 0.0 && (h == 0 || onShare[h - 1] <= 0.0)) {
        starts++;
      }
    }
    return starts;
  }

  /** The same volume in US gallons. */
  public static double usGallons(double litresL) {
    return Unit.GALLON.fromInside(litresL);
  }

  /** Price of so many litres, null without a price. */
  public static @Nullable Double cost(double litresL, @Nullable Double perLitreCost) {
    return perLitreCost == null ? null : Double.valueOf(litresL * perLitreCost);
  }

  /** Carbon dioxide from burning so many litres of this generator's fuel. */
  public double co2Kg(double litresL) {
    return litresL * fuel.co2KgPerL();
  }
}
