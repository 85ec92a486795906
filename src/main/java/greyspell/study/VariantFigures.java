package greyspell.study;

import greyspell.balance.Carry;
import greyspell.balance.Design;
import greyspell.balance.Ledger;
import greyspell.outcome.Figures;
import greyspell.outcome.Outcome.WinterBooks;
import greyspell.outcome.OutcomeReader;
import greyspell.power.FuelUse;
import greyspell.scenario.Scenario;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * What one variant of a home comes to, in the few figures of a table's row. They are those that
 * {@code run} tells of the changed scenario; where winters are drawn, those of all of them
 * together.
 *
 * @param unmet an average year of all hours
 * @param wholeWinters how many winters count
 * @param darkWinters in how many of them something was not served
 * @param worst the whole winter with the most energy unserved, the first of several; null if there
 *     is no whole winter
 * @param loadWh asked for in an average year
 * @param generatorHours in an average year
 * @param generatorStarts in all years together
 * @param fuelL burnt in an average year, 0 without a generator
 * @param curtailedWh sun not taken in an average year
 * @param lowestChargeShare of the usable bank, in the worst hour of all
 * @param usableBankWh in a full bank above the reserve
 * @param greyP10Days one start day in ten is carried for less by a full bank
 * @param greyWorstDays the worst start day
 */
public record VariantFigures(
    Unmet unmet,
    int years,
    int wholeWinters,
    int darkWinters,
    @Nullable WinterBooks worst,
    double loadWh,
    double generatorHours,
    int generatorStarts,
    double fuelL,
    double curtailedWh,
    double lowestChargeShare,
    double usableBankWh,
    double greyP10Days,
    double greyWorstDays) {
  private static final double LONGEST_H = 365.0 * 24.0;
  private static final double ONE_IN_TEN = 0.1;

  /** Runs the variant through all the weather of the trials. */
  public static VariantFigures of(Trials trials, Scenario variant) {
    List<Part> parts =
        IntStream.range(0, trials.parts())
            .parallel()
            .mapToObj(i -> Part.of(trials, i, variant))
            .toList();
    var sum = new Sum();
    parts.forEach(sum::add);
    return sum.figures();
  }

  /** Of one part of the weather; its ledger is let go of at once. */
  private static final class Part {
    private final Unmet unmet;
    private final int years;
    private final List<WinterBooks> winters;
    private final double fuelL;
    private final double usableBankWh;
    private final double[] carriedHours;

    private Part(
        Unmet unmet,
        int years,
        List<WinterBooks> winters,
        double fuelL,
        double usableBankWh,
        double[] carriedHours) {
      this.unmet = unmet;
      this.years = years;
      this.winters = winters;
      this.fuelL = fuelL;
      this.usableBankWh = usableBankWh;
      this.carriedHours = carriedHours;
    }

    static Part of(Trials trials, int part, Scenario variant) {
      Ledger ledger = trials.books(part, variant, Set.of());
      Design design = trials.design(part, variant, Set.of());
      FuelUse fuel = Again.fuel(variant, ledger);
      return new Part(
          Unmet.of(ledger),
          ledger.forcing().calendar().years(),
          OutcomeReader.winters(ledger, variant.site().isNorthern()),
          fuel == null ? 0.0 : fuel.totalL(0, ledger.hours()),
          design.bank().windowWh(),
          new Carry(ledger.forcing(), design).hoursFromEachDay(LONGEST_H));
    }
  }

  /** All parts together. */
  private static final class Sum {
    private final List<double[]> carried = new ArrayList<>();
    private int years, whole, dark, starts, days;
    private double unmetWh, unmetHours, letGoWh, generatorWh;
    private double loadWh, generatorHours, fuelL, curtailedWh, usableWh;
    private double lowestShare = 1.0;
    private @Nullable WinterBooks worst;

    void add(Part part) {
      years += part.years;
      unmetWh += part.unmet.wh() * part.years;
      unmetHours += part.unmet.unmetHours() * part.years;
      letGoWh += part.unmet.letGoWh() * part.years;
      generatorWh += part.unmet.generatorWh() * part.years;
      fuelL += part.fuelL;
      usableWh = part.usableBankWh;
      carried.add(part.carriedHours);
      days += part.carriedHours.length;
      part.winters.forEach(this::add);
    }

    private void add(WinterBooks winter) {
      Figures f = winter.figures();
      loadWh += f.loadWh();
      generatorHours += f.beyond().generatorHours();
      starts += f.beyond().generatorStarts();
      curtailedWh += f.curtailedWh();
      lowestShare = usableWh > 0.0 ? Math.min(lowestShare, f.lowestChargeWh() / usableWh) : 0.0;
      if (winter.winter().isWhole()) {
        whole++;
        dark += f.unmetHours() > 0 ? 1 : 0;
        worst = worst == null || f.unmetWh() > worst.figures().unmetWh() ? winter : worst;
      }
    }

    VariantFigures figures() {
      var hours = new double[days];
      int at = 0;
      for (double[] part : carried) {
        System.arraycopy(part, 0, hours, at, part.length);
        at += part.length;
      }
      Arrays.sort(hours);
      return new VariantFigures(
          new Unmet(unmetWh / years, unmetHours / years, letGoWh / years, generatorWh / years),
          years,
          whole,
          dark,
          worst,
          loadWh / years,
          generatorHours / years,
          starts,
          fuelL / years,
          curtailedWh / years,
          lowestShare,
          usableWh,
          rank(hours) / 24.0,
          hours[0] / 24.0);
    }

    /** Straight line between the two nearest ranks, as the autonomy of {@code run}. */
    private static double rank(double[] sorted) {
      double rank = ONE_IN_TEN * (sorted.length - 1);
      int below = (int) rank;
      double next = sorted[Math.min(below + 1, sorted.length - 1)];
      return sorted[below] + (rank - below) * (next - sorted[below]);
    }
  }
}
