package greyspell.study;

import greyspell.power.FuelUse;
import greyspell.power.PeakCheck;
import greyspell.storage.FullCharge;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What one run tells beside its books: found by running the same home again with one thing changed.
 *
 * @param fuel null without a generator
 * @param peaks what the inverter's ratings say to the peaks within the hours
 * @param fullCharge how long the bank goes without being full
 * @param service year by year as the bank ages; empty if the scenario asks for no service years
 * @param replacementYears from now until the bank is down to its end of life, null if later or not
 *     asked
 * @param loads the answer's range with what is not sure of the loads; null where all is measured
 * @param tenWattsLess with 10 W less of always-on draw
 */
public record Besides(
    @Nullable FuelUse fuel,
    PeakCheck peaks,
    FullCharge fullCharge,
    List<ServiceYear> service,
    @Nullable Double replacementYears,
    @Nullable LoadAnswers loads,
    Unmet tenWattsLess) {
  public Besides {
    service = List.copyOf(service);
  }

  /**
   * One year of a bank's service, in the same weather each year.
   *
   * @param number 1 for the first
   * @param healthShare capacity at its start over nominal
   */
  public record ServiceYear(int number, double healthShare, Unmet unmet) {}

  /**
   * How far the answer may lie from the likely one because loads are guessed.
   *
   * @param low every load at the low end of its range
   * @param high every load at the high end
   * @param narrowest the load whose measurement would narrow the answer most, null if none matters
   * @param narrowestLow with that load alone at its low end
   * @param narrowestHigh with that load alone at its high end
   */
  public record LoadAnswers(
      Unmet low,
      Unmet likely,
      Unmet high,
      @Nullable String narrowest,
      Unmet narrowestLow,
      Unmet narrowestHigh) {}
}
