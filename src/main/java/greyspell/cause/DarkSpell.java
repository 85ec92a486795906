package greyspell.cause;

import java.util.List;

/**
 * Shortfalls that belong together: between them the bank never came back to half. From the hour in
 * which the bank was last full, or fullest, to the one in which it is half full again. Hours are
 * those of the ledger; in one year that is run round and round {@code toHour} may lie beyond its
 * last hour and goes on at its first.
 *
 * @param fromHour the first hour after the bank was last full, or fullest since the spell before
 * @param firstUnmetHour the first hour in which something was not served
 * @param lastUnmetHour the last one
 * @param toHour one past the hour in which the bank came back to half, or one past the last hour of
 *     the books if it did not
 * @param isFullAtStart whether the bank was full before
 * @param isRecovered whether it came back to half within the books
 * @param startChargeShare of the usable bank before {@code fromHour}
 * @param unmetHours hours in which something was not served
 * @param unmetWh in all
 * @param days whole days from the one of {@code fromHour} to the one that holds the last hour
 */
public record DarkSpell(
    int fromHour,
    int firstUnmetHour,
    int lastUnmetHour,
    int toHour,
    boolean isFullAtStart,
    boolean isRecovered,
    double startChargeShare,
    int unmetHours,
    double unmetWh,
    List<SpellDay> days) {
  public DarkSpell {
    days = List.copyOf(days);
  }

  /** Whether an hour of the books, of so many in all, lies within. */
  public boolean holds(int hour, int hours) {
    return (hour >= fromHour && hour < toHour) || hour + hours < toHour;
  }
}
