package greyspell.weather;

import greyspell.published.PublishedCheck;
import greyspell.published.PublishedChecks;
import java.util.List;

/**
 * Worked examples of sun geometry, printed in MJ/m2. FAO-56 example 8 was seen second-hand in a
 * public test file that cites its pages; the statements of the textbook's examples were seen, their
 * answers are from memory.
 */
class ExtraterrestrialHourPublishedTest implements PublishedChecks {
  private static final double MJ_PER_WH = 0.0036;
  private static final double HALF_TENTH = 0.05;
  private static final double HUNDREDTH = 0.01;
  private static final double HALF_HUNDREDTH = 0.005;
  private static final double HALF_THOUSANDTH = 0.0005;
  private static final String FAO =
      "Allen et al. (1998), FAO Irrigation and Drainage Paper 56, ch. 3, ";
  private static final String BOOK = "Duffie and Beckman, Solar Engineering of Thermal Processes, ";

  private static ExtraterrestrialHour sun(double latitudeDeg, int dayOfYear) {
    return new ExtraterrestrialHour(latitudeDeg, 0.0, 0.0, dayOfYear);
  }

  @Override
  public List<PublishedCheck> checks() {
    return List.of(
        check(
            FAO + "example 8",
            "day sum, 20 S, 3 September",
            "MJ/m2",
            32.2,
            HALF_TENTH,
            sun(-20.0, 246).dayWhm2() * MJ_PER_WH),
        check(
            FAO + "example 8",
            "sunset hour angle, 20 S, 3 September",
            "rad",
            1.527,
            HALF_THOUSANDTH,
            sun(-20.0, 246).sunsetAngle()),
        check(
            FAO + "example 10",
            "day sum, 22.9 S, 15 May",
            "MJ/m2",
            25.1,
            HALF_TENTH,
            sun(-22.9, 135).dayWhm2() * MJ_PER_WH),
        check(
            BOOK + "example 1.10.1 (from memory)",
            "day sum, 43 N, 15 April",
            "MJ/m2",
            33.8,
            HALF_TENTH,
            sun(43.0, 105).dayWhm2() * MJ_PER_WH),
        check(
            BOOK + "example 1.10.2 (from memory)",
            "solar hour 10 to 11, 43 N, 15 April",
            "MJ/m2",
            3.79,
            HUNDREDTH,
            sun(43.0, 105).betweenWhm2(-Math.PI / 6.0, -Math.PI / 12.0) * MJ_PER_WH),
        check(
            BOOK + "example 1.5.1 (from memory)",
            "solar time at 10:30 standard time (UTC-6), 89.4 W, 3 February",
            "h",
            10.0 + 19.0 / 60.0,
            HALF_HUNDREDTH + 0.5 / 60.0,
            10.5 + new ExtraterrestrialHour(43.0, -89.4, -6.0, 34).solarMinusClockH()));
  }

  private static PublishedCheck check(
      String source, String what, String unit, double expected, double tolerance, double got) {
    return new PublishedCheck("weather", source, what, unit, expected, tolerance, () -> got);
  }
}
