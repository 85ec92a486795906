package greyspell.study;

import greyspell.array.ArraySpec;
import greyspell.balance.BusNeed;
import greyspell.balance.Forcing;
import greyspell.calendar.Monthly;
import greyspell.power.step.InverterLimits;
import greyspell.scenario.Scenario;
import greyspell.sizing.HandMethod;
import greyspell.storage.BankSpec;
import greyspell.storage.Chemistry;
import greyspell.storage.SheetCapacity;
import java.util.List;

/** What the standards' hand method starts from: means of the months of a home's own hours. */
final class HandStudy {
  /** Of a usual day, lead-acid; common practice, no source. Lithium is not held to one. */
  private static final double LEAD_DAILY_DEPTH = 0.2;

  private static final double MARGIN = 0.1;
  private static final double HOURS_OF_DAY = 24.0;

  // sums of a month, then means of its day
  private final double[] needWh = new double[12];
  private final double[] arrayWh = new double[12];
  private final double[] otherWh = new double[12];
  private final double[] lockedShare = new double[12];
  private final int[] hours = new int[12];
  private double mostNeedWh;

  private HandStudy() {}

  /**
   * The hand method for a home as it is.
   *
   * @param forcings of all parts of the weather
   */
  static HandMethod of(
      Scenario home, List<Forcing> forcings, InverterLimits inverter, SizeWanted wanted) {
    var sums = new HandStudy();
    for (Forcing forcing : forcings) {
      sums.add(forcing, BusNeed.wh(forcing, inverter));
    }
    return HandMethod.of(sums.asked(home, wanted));
  }

  private void add(Forcing forcing, double[] need) {
    for (int h = 0; h < need.length; h++) {
      int m = forcing.calendar().month(h) - 1;
      needWh[m] += need[h];
      mostNeedWh = Math.max(mostNeedWh, need[h]);
      arrayWh[m] += forcing.solarBusWh()[h];
      otherWh[m] += forcing.otherWh(h);
      lockedShare[m] += forcing.lockedShare()[h];
      hours[m]++;
    }
  }

  private HandMethod.Asked asked(Scenario home, SizeWanted wanted) {
    BankSpec bank = home.bank();
    double depth = bank.fullFraction() - bank.reserveFraction();
    boolean isLithium = bank.chemistry() == Chemistry.LITHIUM_IRON_PHOSPHATE;
    return new HandMethod.Asked(
        bank.nominalV(),
        bank.capacityWh() / bank.packs(),
        ofDay(needWh),
        ofDay(arrayWh),
        ofDay(otherWh),
        mostNeedWh,
        home.arrays().stream().mapToInt(ArraySpec::modules).sum(),
        wanted.reserveDays(),
        depth,
        isLithium ? depth : LEAD_DAILY_DEPTH,
        bank.life().endOfLifeShare(),
        coldFactor(),
        MARGIN,
        inH -> SheetCapacity.share(bank, inH),
        wanted.wantedRatio());
  }

  private Monthly ofDay(double[] sumWh) {
    var mean = new double[12];
    for (int m = 0; m < 12; m++) {
      mean[m] = sumWh[m] * HOURS_OF_DAY / hours[m];
    }
    return Monthly.of(mean);
  }

  /** By the month in which the cold locks most. */
  private double coldFactor() {
    double most = 0.0;
    for (int m = 0; m < 12; m++) {
      most = Math.max(most, lockedShare[m] / hours[m]);
    }
    return most < 1.0 ? 1.0 / (1.0 - most) : Double.POSITIVE_INFINITY;
  }
}
