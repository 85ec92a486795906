package greyspell.load;

import greyspell.calendar.Monthly;

/**
 * What one load asks for, for the books.
 *
 * @param name of the appliance, or of the log
 * @param isDirectCurrent fed from the bus
 * @param isMedical a life or a health depends on it
 * @param range how far the energy may lie from this
 * @param yearlyWh mean of the calendar's years
 * @param standbyYearlyWh the part of it drawn while the appliance is not running
 * @param monthlyWh mean of each month over the years
 */
public record LoadBook(
    String name,
    Priority priority,
    Evidence evidence,
    boolean isDirectCurrent,
    boolean isMedical,
    LoadRange range,
    double yearlyWh,
    double standbyYearlyWh,
    Monthly monthlyWh) {

  public double lowYearlyWh() {
    return range.lowFactor() * yearlyWh;
  }

  public double highYearlyWh() {
    return range.highFactor() * yearlyWh;
  }
}
