package greyspell.storage;

import greyspell.quantity.Check;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A bank's capacity year by year until long after it should have been replaced.
 *
 * @param years in order, the first begins as the bank is now
 * @param replacementYears time from now until it is down to its end of life, a straight line within
 *     the year; null if that lies beyond the last year
 */
public record ServiceLife(List<Year> years, @Nullable Double replacementYears) {
  /** Below this the books of a bank tell nothing more. */
  private static final double LEAST_HEALTH_SHARE = 0.05;

  public ServiceLife {
    years = List.copyOf(years);
  }

  /**
   * One year.
   *
   * @param number 1 for the first
   * @param healthShare capacity at its start over nominal
   * @param fade lost in it
   */
  public record Year(int number, double healthShare, Ageing.Fade fade) {
    /** At the end of the year. */
    public double endHealthShare() {
      return healthShare - fade.totalShare();
    }
  }

  /** The hours of a year with a bank of a given health; whoever has the hourly loop gives it. */
  public interface Hours {
    /**
     * Charge at the end of each hour, over all that the cells hold then.
     *
     * @param number of the year, 1 for the first
     */
    double[] chargeShare(int number, BankSpec bank);

    /** Of the bank, as many hours. */
    double[] temperatureC(int number);
  }

  /**
   * Follows the bank; it is not replaced on the way.
   *
   * @param bank as it is now, whose {@link BankSpec#healthShare} is where it begins
   * @param howMany years to follow
   */
  public static ServiceLife follow(BankSpec bank, int howMany, Hours hours) {
    Check.within("howMany", howMany, 1, 100);
    double endShare = bank.life().endOfLifeShare();
    var years = new ArrayList<Year>();
    Double replacement = bank.healthShare() <= endShare ? 0.0 : null;
    double healthShare = bank.healthShare();
    for (int number = 1; number <= howMany; number++) {
      BankSpec aged = bank.withHealth(healthShare);
      Ageing.Fade fade =
          Ageing.year(
              hours.chargeShare(number, aged),
              hours.temperatureC(number),
              bank.chemistry(),
              bank.life());
      var year = new Year(number, healthShare, fade);
      years.add(year);
      if (replacement == null && year.endHealthShare() <= endShare) {
        replacement = number - 1 + (healthShare - endShare) / fade.totalShare();
      }
      healthShare = year.endHealthShare();
      if (healthShare < LEAST_HEALTH_SHARE) {
        break;
      }
    }
    return new ServiceLife(years, replacement);
  }
}
