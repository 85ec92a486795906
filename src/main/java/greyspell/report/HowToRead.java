package greyspell.report;

import greyspell.report.Page.Pair;
import java.util.List;

/** The page's own dictionary. */
final class HowToRead {
  private HowToRead() {}

  static List<Pair> words() {
    return List.of(
        new Pair(
            "kW and kWh",
            "kW is how fast energy flows, kWh is how much has flowed. A 1 kW heater uses 1 kWh in an hour."),
        new Pair("Need", "What the house asks for, plus the always-on draw of the system itself."),
        new Pair(
            "Charge",
            "Energy in the bank above the reserve: 100 % is full, 0 % is the reserve, which is not drawn."
                + " In the cold a part of the charge cannot be drawn either, so a house can run out above 0 %."),
        new Pair("Bus", "The battery side, where panels, bank and inverter meet."),
        new Pair(
            "Shortfall", "An unbroken run of hours in which something asked for was not served."),
        new Pair(
            "Grey spell",
            "A run of days on each of which the panels could bring less than was needed."),
        new Pair(
            "Dark autonomy",
            "How many days a full bank lasts with no sun at all, at the need of that month."),
        new Pair(
            "Grey autonomy",
            "How many days a full bank lasts in the weather that really comes, started on each day."),
        new Pair(
            "Loss-of-load probability",
            "The share of hours (or days) in which something was not served."),
        new Pair(
            "Left over",
            "Sun that could not be taken: the bank was full, at its charge limit, or too cold. A battery"
                + " holds days of energy, not seasons, so summer's cannot be kept for winter."),
        new Pair("Clipped", "Sun above what the controller can carry."),
        new Pair("Full cycles", "Energy drawn from the cells, counted in full banks."),
        new Pair(
            "Winter",
            "In the north from July to June, named like 2017/18; in the south a calendar year. Half winters"
                + " at the ends of the weather are shown but not counted."));
  }
}
