package greyspell.sizing;

import greyspell.calendar.Monthly;
import greyspell.published.PublishedCheck;
import greyspell.published.PublishedChecks;
import java.util.Arrays;
import java.util.List;

/** The hand method, on a worked case reckoned by hand from the stated formulas. */
class HandMethodPublishedTest implements PublishedChecks {
  private static final String WORKED =
      "IEEE 1013 and AS/NZS 4509.2, formulas from memory, worked by hand: 3000 Wh a day behind an inverter of 90 %, 24 V, 4 days, depth 80 %, 90 % of the capacity in the cold, margin 10 %";
  private static final String RATIO =
      "IEEE 1013-2000, definition of array-to-load ratio (opened page), worked by hand: 4.0 and 2.5 kWh a day from 10 modules for 3.3333 kWh";

  private static HandMethod worked() {
    double needWh = 3000.0 / 0.9;
    double[] arrayWh = new double[12];
    Arrays.fill(arrayWh, 4000.0);
    arrayWh[11] = 2500.0;
    return HandMethod.of(
        new HandMethod.Asked(
            24.0,
            100.0 * 24.0,
            Monthly.constant(needWh),
            Monthly.of(arrayWh),
            Monthly.constant(0.0),
            1.0,
            10,
            4.0,
            0.8,
            0.8,
            1.0,
            1.0 / 0.9,
            0.1,
            inH -> 1.0,
            1.3));
  }

  @Override
  public List<PublishedCheck> checks() {
    return List.of(
        new PublishedCheck(
            "sizing", WORKED, "need of a day", "Ah", 138.89, 0.005, () -> worked().loadAhPerDay()),
        new PublishedCheck(
            "sizing", WORKED, "carried", "Ah", 555.6, 0.05, () -> worked().carriedAh()),
        new PublishedCheck(
            "sizing", WORKED, "by depth", "Ah", 694.4, 0.05, () -> worked().byDepthAh()),
        new PublishedCheck(
            "sizing", WORKED, "in the cold", "Ah", 771.6, 0.05, () -> worked().inTheColdAh()),
        new PublishedCheck(
            "sizing", WORKED, "with the margin", "Ah", 848.8, 0.05, () -> worked().capacityAh()),
        new PublishedCheck(
            "sizing", RATIO, "lowest ratio", "1", 0.75, 0.005, () -> worked().nowRatio()),
        new PublishedCheck(
            "sizing",
            RATIO,
            "modules for a ratio of 1.3",
            "1",
            17.33,
            0.005,
            () -> worked().modules()));
  }
}
