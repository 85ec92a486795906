package greyspell.weather.ensemble;

import org.apache.commons.math3.special.Erf;

/**
 * One month's skies: turns the hidden normal number into a clearness so that the published
 * distribution is met, and tells how much that makes the month's mean swing between years.
 *
 * <pre>
 * K        = K(F),  F = Phi(x)                                        the clearness whose share is that of x
 * rhoK(r)  = sum over k of (ak^2 / k!) r^k / variance(K),  ak = E[K Hek(x)]       correlation of K where that of x is r
 * spread   = sd(K) / Kbar * sqrt(1/n^2 * sum over i, j of rhoK(r(i - j)))         of the month's mean, over Kbar
 * r(l)     = (1 - s - m) d^l + s e^l + m
 *
 * x, d, e, s, m   see SkyMemory        Phi   normal distribution        Hek   Hermite polynomial        n   days of the month
 * </pre>
 *
 * K(x) stands in a table and is read along straight lines (error below 1e-5). Beyond 5 standard
 * deviations the ends are held. The spread is our own working-out; MadeWintersTest holds it against
 * made years.
 */
final class MonthSky {
  private static final double REACH = 5.0;
  private static final int STEPS = 512;
  private static final double PER_UNIT = STEPS / (2.0 * REACH);
  private static final int TERMS = 6;
  private static final double MOST_OF_MONTH = 0.9;

  private final double mean;
  private final int days;
  private final double[] table = new double[STEPS + 1];
  private final double[] correlation = new double[TERMS + 1];
  private final double relativeDeviation;

  private double fastWeight;
  private double spellWeight;
  private double monthWeight;
  private double spreadFraction;

  MonthSky(double mean, int days) {
    this.mean = mean;
    this.days = days;
    var published = new DailyClearness(mean);
    for (int i = 0; i <= STEPS; i++) {
      double x = i / PER_UNIT - REACH;
      table[i] = published.at(0.5 * Erf.erfc(-x / Math.sqrt(2.0)));
    }
    double variance = hermite();
    relativeDeviation = Math.sqrt(variance) / mean;
  }

  /** Fills the terms of rhoK; gives the variance of K. */
  private double hermite() {
    var a = new double[TERMS + 1];
    double square = 0.0;
    double weights = 0.0;
    for (int i = 0; i <= STEPS; i++) {
      double x = i / PER_UNIT - REACH;
      double weight = StrictMath.exp(-0.5 * x * x);
      weights += weight;
      square += weight * table[i] * table[i];
      double before = 0.0;
      double he = 1.0;
      for (int k = 0; k <= TERMS; k++) {
        a[k] += weight * table[i] * he;
        double next = x * he - k * before;
        before = he;
        he = next;
      }
    }
    double variance = square / weights - a[0] * a[0] / (weights * weights);
    double factorial = 1.0;
    for (int k = 1; k <= TERMS; k++) {
      factorial *= k;
      correlation[k] = a[k] * a[k] / (weights * weights) / factorial / variance;
    }
    return variance;
  }

  /** The memory alone: the spread of the month is what comes of it. */
  void remember(SkyMemory memory) {
    weigh(memory, memory.spellShare(), 0.0);
  }

  /**
   * Meets a stated spread of the month's mean: a colour of the month's own is added, or the slow
   * part taken back. Where even days without spells swing more, that stays; then false.
   */
  boolean meet(SkyMemory memory, double wanted) {
    boolean isMore = spread(memory, memory.spellShare(), 0.0) < wanted;
    double low = 0.0;
    double high = isMore ? MOST_OF_MONTH - memory.spellShare() : memory.spellShare();
    for (int round = 0; round < 50; round++) {
      double middle = 0.5 * (low + high);
      double got =
          isMore ? spread(memory, memory.spellShare(), middle) : spread(memory, middle, 0.0);
      if (got < wanted) {
        low = middle;
      } else {
        high = middle;
      }
    }
    if (isMore) {
      weigh(memory, memory.spellShare(), low);
    } else {
      weigh(memory, low, 0.0);
    }
    return Math.abs(spreadFraction - wanted) <= 0.01;
  }

  private void weigh(SkyMemory memory, double spellShare, double monthShare) {
    fastWeight = Math.sqrt(1.0 - spellShare - monthShare);
    spellWeight = Math.sqrt(spellShare);
    monthWeight = Math.sqrt(monthShare);
    spreadFraction = spread(memory, spellShare, monthShare);
  }

  private double spread(SkyMemory memory, double spellShare, double monthShare) {
    double sum = days;
    double fast = 1.0;
    double spell = 1.0;
    for (int lag = 1; lag < days; lag++) {
      fast *= memory.dayCorrelation();
      spell *= memory.spellCorrelation();
      double r = (1.0 - spellShare - monthShare) * fast + spellShare * spell + monthShare;
      sum += 2.0 * (days - lag) * ofClearness(r);
    }
    return relativeDeviation * Math.sqrt(sum) / days;
  }

  private double ofClearness(double r) {
    double value = 0.0;
    for (int k = TERMS; k >= 1; k--) {
      value = (value + correlation[k]) * r;
    }
    return value;
  }

  double latent(double fast, double spell, double month) {
    return fastWeight * fast + spellWeight * spell + monthWeight * month;
  }

  double clearness(double x) {
    double at = (x + REACH) * PER_UNIT;
    if (at <= 0.0) {
      return table[0];
    }
    if (at >= STEPS) {
      return table[STEPS];
    }
    int i = (int) at;
    return table[i] + (at - i) * (table[i + 1] - table[i]);
  }

  double mean() {
    return mean;
  }

  /** Standard deviation of a day's clearness over the mean. */
  double relativeDeviation() {
    return relativeDeviation;
  }

  double spreadFraction() {
    return spreadFraction;
  }
}
