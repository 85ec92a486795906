package greyspell.storage;

import greyspell.quantity.Check;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How a bank ages.
 *
 * @param cycleLife cycles of a depth until the sheet calls it worn, rising in depth, falling in
 *     cycles
 * @param cycleLifeToShare capacity left when the sheet calls it worn
 * @param calendarLifeH time until it is down to {@code endOfLifeShare} at 25 °C, at rest and half
 *     charged if it is lithium, full if it is lead-acid
 * @param endOfLifeShare capacity at which it is replaced
 * @param fullChargeEveryH longest time that it should go without a full charge, null if it needs
 *     none
 * @param serviceYears over how many years it is followed, 0 if that is not asked
 */
public record LifeSheet(
    List<CyclesAt> cycleLife,
    double cycleLifeToShare,
    double calendarLifeH,
    double endOfLifeShare,
    @Nullable Double fullChargeEveryH,
    int serviceYears) {
  public static final double HOURS_IN_YEAR = 8766.0;

  public LifeSheet {
    cycleLife = List.copyOf(cycleLife);
    Check.within("points of cycleLife", cycleLife.size(), 1, 1000);
    for (int i = 1; i < cycleLife.size(); i++) {
      Check.within(
          "depthShare of a point of cycleLife",
          cycleLife.get(i).depthShare(),
          Math.nextUp(cycleLife.get(i - 1).depthShare()),
          1.0);
      Check.within(
          "lifeCycles of a point of cycleLife",
          cycleLife.get(i).lifeCycles(),
          Double.MIN_VALUE,
          Math.nextDown(cycleLife.get(i - 1).lifeCycles()));
    }
    Check.within("cycleLifeToShare", cycleLifeToShare, 0.1, 0.99);
    Check.positive("calendarLifeH", calendarLifeH);
    Check.within("endOfLifeShare", endOfLifeShare, 0.1, 0.99);
    if (fullChargeEveryH != null) {
      Check.positive("fullChargeEveryH", fullChargeEveryH);
    }
    Check.within("serviceYears", serviceYears, 0, 100);
  }

  /** One point of a data sheet: so many cycles of this depth. */
  public record CyclesAt(double depthShare, double lifeCycles) {
    public CyclesAt {
      Check.within("depthShare", depthShare, 1e-6, 1.0);
      Check.positive("lifeCycles", lifeCycles);
    }
  }

  /** Typical of the chemistry, from {@link CellDefaults}. */
  public static LifeSheet usual(Chemistry chemistry) {
    CellDefaults usual = CellDefaults.of(chemistry);
    return new LifeSheet(
        usual.cycleLife(),
        CellDefaults.END_OF_LIFE_SHARE,
        usual.calendarLifeH(),
        CellDefaults.END_OF_LIFE_SHARE,
        usual.fullChargeEveryH(),
        0);
  }
}
