package greyspell.study;

import greyspell.balance.Carry;
import greyspell.outcome.Autonomy;
import greyspell.outcome.Band;
import greyspell.scenario.Scenario;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/**
 * What one variant of a home comes to, in the figures of a table's row: its {@link Trial}, and how
 * long a full bank carries it. They are those that {@code run} tells of the changed scenario; where
 * winters are drawn, those of all of them together.
 *
 * @param years of weather altogether
 * @param usableBankWh in a full bank above the reserve
 * @param greyP10Days one start day in ten is carried for less by a full bank
 * @param greyWorstDays the worst start day
 */
public record VariantFigures(
    Trial trial, int years, double usableBankWh, double greyP10Days, double greyWorstDays) {
  private static final double DAY_H = 24.0;
  private static final double ONE_IN_TEN = 0.1;

  /** Runs the variant through all the weather of the trials. */
  public static VariantFigures of(Trials trials, Scenario variant) {
    List<Part> parts = trials.each(variant, Set.of(), ran -> Part.of(variant, ran));
    double[] hours = parts.stream().flatMapToDouble(p -> Arrays.stream(p.carriedHours)).toArray();
    Arrays.sort(hours);
    return new VariantFigures(
        trials.sum(variant, parts.stream().map(p -> p.books).toList()),
        trials.years(),
        parts.get(0).usableBankWh,
        Band.share(hours, ONE_IN_TEN) / DAY_H,
        hours[0] / DAY_H);
  }

  /** Lowest charge of all hours, of the usable bank; 0 where there is none. */
  public double lowestChargeShare() {
    return usableBankWh > 0.0 ? trial.lowestChargeWh() / usableBankWh : 0.0;
  }

  /** Of one part of the weather; its ledger is let go of at once. */
  private static final class Part {
    private final Trials.Part books;
    private final double usableBankWh;
    private final double[] carriedHours;

    private Part(Trials.Part books, double usableBankWh, double[] carriedHours) {
      this.books = books;
      this.usableBankWh = usableBankWh;
      this.carriedHours = carriedHours;
    }

    static Part of(Scenario variant, HomeRun ran) {
      return new Part(
          Trials.Part.of(variant, ran),
          ran.design().bank().windowWh(),
          new Carry(ran.forcing(), ran.design()).hoursFromEachDay(Autonomy.LONGEST_D * DAY_H));
    }
  }
}
