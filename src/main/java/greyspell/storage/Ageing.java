package greyspell.storage;

import greyspell.quantity.Check;

/**
 * Capacity lost in a year, by cycles and by standing.
 *
 * <pre>
 * by cycles    (1 - qs) sum n(d) / N(d)                                  of all cycles of the charge, see {@link CycleLife}
 * by standing  (1 - qe) / L  mean of  f(s) exp[B (1 / 298.15 - 1 / T)]   a year
 *
 * qs  capacity at which the sheet counts a battery as worn     1
 * qe  capacity at which it is replaced                         1
 * L   life at rest at 25 °C                                    years
 * B   lithium 3789 K; lead-acid 6368 K
 * f   lithium 0.5 + s; lead-acid 2 - s
 * s   charge over all that the cells hold                      1
 * T   bank temperature                                         K      cells within -30 .. 60 °C
 * </pre>
 *
 * The lithium B is the published activation energy of {@link LithiumFade}, 31 500 J/mol over 8.314
 * J/(mol K), found for cycling and taken here for standing; the lead-acid B halves the life from 25
 * to 35 °C, a rule of the trade without source. f is our own choice, no source: lithium wears
 * standing full, lead-acid standing empty. Both losses are straight lines in time, which tells too
 * little of the first years of lithium and too much of the last. Cycles and standing add up.
 *
 * <p>Source: as said with each part; the whole is our own. Held by AgeingTest.
 */
public final class Ageing {
  private static final double LITHIUM_KELVIN =
      LithiumFade.ACTIVATION_J_PER_MOL / LithiumFade.GAS_J_PER_MOL_K;
  private static final double LEAD_KELVIN = Math.log(2.0) / (1.0 / 298.15 - 1.0 / 308.15);
  private static final double WARM_KELVIN = 298.15;
  private static final double YEAR_H = 8760.0;

  private Ageing() {}

  /**
   * Lost in a year, as shares of the nominal capacity.
   *
   * @param cycleShare by cycles
   * @param calendarShare by standing
   */
  public record Fade(double cycleShare, double calendarShare) {
    public double totalShare() {
      return cycleShare + calendarShare;
    }
  }

  /**
   * From hours of one year or of many; of many it is the mean year.
   *
   * @param chargeShare of all that the cells hold, see {@link BankSpec#chargeShare}
   * @param temperatureC of the bank
   */
  public static Fade year(
      double[] chargeShare, double[] temperatureC, Chemistry chemistry, LifeSheet life) {
    int hours = Check.within("hours", chargeShare.length, 1, Integer.MAX_VALUE);
    Check.within("hours of temperatureC", temperatureC.length, hours, hours);
    var cycles = new CycleLife(life.cycleLife());
    Rainflow.count(chargeShare, cycles);
    double years = hours / YEAR_H;
    double sum = 0.0;
    for (int h = 0; h < hours; h++) {
      sum += standingFactor(chemistry, chargeShare[h], temperatureC[h]);
    }
    double lifeYears = life.calendarLifeH() / LifeSheet.HOURS_IN_YEAR;
    return new Fade(
        (1.0 - life.cycleLifeToShare()) * cycles.damageShare() / years,
        (1.0 - life.endOfLifeShare()) / lifeYears * sum / hours);
  }

  /** As the other, for this bank. */
  public static Fade year(double[] chargeShare, double[] temperatureC, BankSpec bank) {
    return year(chargeShare, temperatureC, bank.chemistry(), bank.life());
  }

  /** How much faster than at 25 °C, half charged (lithium) or full (lead-acid). */
  public static double standingFactor(
      Chemistry chemistry, double chargeShare, double temperatureC) {
    double kelvin = temperatureC + LithiumFade.KELVIN_AT_ZERO_C;
    double inverse = 1.0 / WARM_KELVIN - 1.0 / kelvin;
    return switch (chemistry) {
      case LITHIUM_IRON_PHOSPHATE -> (0.5 + chargeShare) * Math.exp(LITHIUM_KELVIN * inverse);
      case LEAD_ACID_FLOODED, LEAD_ACID_SEALED ->
          (2.0 - chargeShare) * Math.exp(LEAD_KELVIN * inverse);
    };
  }
}
