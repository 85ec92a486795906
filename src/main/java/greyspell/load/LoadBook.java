package greyspell.load;

import greyspell.calendar.Monthly;

/**
 * What one load asks for, for the books.
 *
 * @param name of the appliance, or of the log
 * @param isDirectCurrent fed from the bus
 * @param yearlyWh mean of the calendar's years
 * @param standbyYearlyWh the part of it drawn while the appliance is not running
 * @param monthlyWh mean of each month over the years
 */
public record LoadBook(
    String name,
    boolean isDirectCurrent,
    double yearlyWh,
    double standbyYearlyWh,
    Monthly monthlyWh) {}
