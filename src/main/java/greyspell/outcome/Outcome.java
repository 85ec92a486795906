package greyspell.outcome;

import greyspell.calendar.Winter;
import java.util.List;

/**
 * What a ledger says.
 *
 * @param winters the winters with their books, half winters at the ends included and marked
 * @param months all months in order
 * @param shortfalls in order of time
 * @param greySpells most kWh short first
 */
public record Outcome(
    Figures total,
    List<WinterBooks> winters,
    List<MonthBooks> months,
    List<Shortfall> shortfalls,
    List<GreySpell> greySpells,
    Autonomy autonomy,
    double usableBankWh) {
  public record WinterBooks(Winter winter, Figures figures) {}

  public record MonthBooks(int year, int month, Figures figures) {}
}
