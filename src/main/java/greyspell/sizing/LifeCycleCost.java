package greyspell.sizing;

import greyspell.quantity.Check;

/**
 * What a home costs over many years, in money of today.
 *
 * <pre>
 * present value   PV = sum of  c(t) / (1 + r)^t
 * yearly cost     A = P r / (1 - (1 + r)^-n),   P / n for r = 0
 *
 * c(t)   paid after t years; what is bought now is paid at t = 0       the user's money
 * r      discount rate above inflation, 0 to 0.5
 * P      a price paid now;  n  years over which it is spread, above 0
 * </pre>
 *
 * Running costs are paid at the end of each year; a bank is bought again each time its life ends
 * before the last year, the first time when the one that stands is worn; nothing is worth anything
 * at the end. Any textbook of engineering economy (present worth, uniform series capital recovery),
 * from memory; LifeCycleCostPublishedTest.
 *
 * @param onceCost paid now
 * @param replacementCost of all replacements of the bank, in money of today
 * @param fuelCost of all years
 * @param wearCost of the generator's hours, all years
 * @param upkeepCost of all years
 */
public record LifeCycleCost(
    double onceCost, double replacementCost, double fuelCost, double wearCost, double upkeepCost) {
  /** All together. */
  public double totalCost() {
    return onceCost + replacementCost + fuelCost + wearCost + upkeepCost;
  }

  /**
   * Over so many years.
   *
   * @param bankCost of a new bank
   * @param firstYears after which the one that stands is replaced, 0 if it is worn now, infinite
   *     for not within these years
   * @param bankYears after which a new one is replaced, above 0, infinite for not within these
   *     years
   * @param yearlyFuelCost fuel of a year
   */
  public static LifeCycleCost of(
      double onceCost,
      double bankCost,
      double firstYears,
      double bankYears,
      double yearlyFuelCost,
      double yearlyWearCost,
      double yearlyUpkeepCost,
      int years,
      double discountFraction) {
    if (!(bankYears > 0.0 && firstYears >= 0.0)) {
      throw new IllegalArgumentException("years " + firstYears + ", then " + bankYears);
    }
    double replacements = 0.0;
    for (double t = firstYears; t < years - 1e-9; t += bankYears) {
      replacements += bankCost / Math.pow(1.0 + discountFraction, t);
    }
    double factor = presentOfYearly(years, discountFraction);
    return new LifeCycleCost(
        onceCost,
        replacements,
        yearlyFuelCost * factor,
        yearlyWearCost * factor,
        yearlyUpkeepCost * factor);
  }

  /** A price spread over years. */
  public static double yearly(double onceCost, double years, double discountFraction) {
    return onceCost / presentOfYearly(years, discountFraction);
  }

  /** What 1 at the end of each year is worth today. */
  static double presentOfYearly(double years, double discountFraction) {
    Check.within("discountFraction", discountFraction, 0.0, 0.5);
    if (!(years > 0.0)) {
      throw new IllegalArgumentException("years " + years);
    }
    return discountFraction < 1e-12
        ? years
        : (1.0 - Math.pow(1.0 + discountFraction, -years)) / discountFraction;
  }
}
