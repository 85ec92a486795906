package greyspell.study;

import greyspell.balance.Forcing;
import greyspell.scenario.Scenario;
import greyspell.storage.BankSpec;
import greyspell.weather.WeatherSeries;
import java.util.ArrayList;
import org.jspecify.annotations.Nullable;

/**
 * How long a home's bank serves before it is down to its end of life. One that has served already
 * has less before it than the new ones that follow it.
 *
 * @param leftYears of the bank as it stands, 0 if it is worn; null if it outlasts the years that
 *     were followed
 * @param newYears of a new one of the same size, above 0; null if it outlasts them
 */
public record BankLife(@Nullable Double leftYears, @Nullable Double newYears) {
  /** A shorter life is a slip in the scenario, not a bank. */
  private static final double LEAST_YEARS = 0.1;

  static BankLife of(Scenario home, Forcing forcing, WeatherSeries weather, int years) {
    Double left = years(home, forcing, weather, years);
    BankSpec bank = home.bank();
    Double fresh =
        bank.healthShare() == 1.0
            ? left
            : years(home.withBank(bank.withHealth(1.0)), forcing, weather, years);
    return new BankLife(left, fresh == null ? null : Double.valueOf(Math.max(LEAST_YEARS, fresh)));
  }

  private static @Nullable Double years(
      Scenario home, Forcing forcing, WeatherSeries weather, int years) {
    return Again.life(home, forcing, weather, years, new ArrayList<>()).replacementYears();
  }
}
