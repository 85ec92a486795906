package greyspell.storage.step;

/**
 * What the hourly loop needs to know of a bank.
 *
 * @param windowWh energy between the reserve and full
 * @param chargeEfficiency bus to cells, above 0 to 1
 * @param dischargeEfficiency cells to bus, above 0 to 1
 * @param mostInWh most that can be taken from the bus in an hour
 * @param mostOutWh most that can be given to the bus in an hour
 * @param keptPerHourShare share of the charge left after an hour of rest
 */
public record BankLimits(
    double windowWh,
    double chargeEfficiency,
    double dischargeEfficiency,
    double mostInWh,
    double mostOutWh,
    double keptPerHourShare) {}
