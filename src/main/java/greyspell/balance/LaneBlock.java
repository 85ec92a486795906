package greyspell.balance;

import greyspell.power.step.InverterLimits;
import greyspell.storage.step.BankLimits;
import java.util.Arrays;
import java.util.List;

/** Up to {@link Lanes#BLOCK} designs as arrays: one array a parameter, one a sum. */
final class LaneBlock {
  /** In place of no limit: a difference to infinity would be no number. */
  static final double NO_LIMIT_WH = 1e12;

  /** Whole vectors, without a remainder to be done one by one. */
  private static final int MULTIPLE = 32;

  final int width;
  final double[] solarFactor;
  final double[] ownDrawWh;
  final double[] windowWh;
  final double[] mostInWh;
  final double[] mostOutWh;
  final double[] kept;
  final double[] etaIn;
  final double[] perIn;
  final double[] etaOut;
  final double[] perOut;

  /** A signed flow x changes the charge by x mean + |x| half. */
  final double[] mean;

  final double[] half;
  final double[] mostAcWh;
  final double[] linear;
  final double[] quadraticPerWh;
  final double[] wirePerWh;

  final double[] chargeWh;
  final double[] emptyWh;
  final double[] rateWh;
  final double[] inverterWh;
  final double[] curtailedWh;
  final double[] bankOutWh;
  final double[] lowestWh;
  final double[] unmetHours;
  final double[] run;
  final double[] longestHours;

  // within an hour
  final double[] surplusWh;
  final double[] flowWh;
  final double[] beyondWh;
  final double[] lackWh;
  final double[] unmetWh;
  final double[] acWh;
  final double[] needWh;
  final double[] servedShare;
  final double[] overWh;
  final double[] floorWh;
  final double[] isUnmet;
  final double[] noneWh;

  /** True while no lane is in a run of unmet hours, so that nothing need be set back. */
  boolean isServed;

  /** False while the arrays of what is lacking hold zeros. */
  boolean mayLack;

  /** What is known of this hour: every lane charges, every lane draws, no limit binds in any. */
  boolean allRise;

  boolean allFall;
  boolean isFree;

  final boolean hasOwnDraw;
  final double leastDrawWh;
  final double mostDrawWh;
  final double leastFactor;
  final double mostFactor;
  final double leastAcWh;
  private final double leastInWh;
  private final double leastOutWh;
  private final double mostLinear;
  private final double mostQuadraticPerWh;
  private final double mostWirePerWh;

  LaneBlock(List<Lane> lanes) {
    width = (lanes.size() + MULTIPLE - 1) / MULTIPLE * MULTIPLE;
    solarFactor = array();
    ownDrawWh = array();
    windowWh = array();
    mostInWh = array();
    mostOutWh = array();
    kept = array();
    etaIn = array();
    perIn = array();
    etaOut = array();
    perOut = array();
    mean = array();
    half = array();
    mostAcWh = array();
    linear = array();
    quadraticPerWh = array();
    wirePerWh = array();
    chargeWh = array();
    emptyWh = array();
    rateWh = array();
    inverterWh = array();
    curtailedWh = array();
    bankOutWh = array();
    lowestWh = array();
    unmetHours = array();
    run = array();
    longestHours = array();
    surplusWh = array();
    flowWh = array();
    beyondWh = array();
    lackWh = array();
    unmetWh = array();
    acWh = array();
    needWh = array();
    servedShare = array();
    overWh = array();
    floorWh = array();
    isUnmet = array();
    noneWh = array();
    for (int j = 0; j < width; j++) {
      // the rest is filled up with the last design and never read
      set(j, lanes.get(Math.min(j, lanes.size() - 1)));
    }
    leastDrawWh = least(ownDrawWh);
    mostDrawWh = most(ownDrawWh);
    hasOwnDraw = leastDrawWh != 0.0 || mostDrawWh != 0.0;
    leastFactor = least(solarFactor);
    mostFactor = most(solarFactor);
    leastAcWh = least(mostAcWh);
    leastInWh = least(mostInWh);
    leastOutWh = least(mostOutWh);
    mostLinear = most(linear);
    mostQuadraticPerWh = most(quadraticPerWh);
    mostWirePerWh = most(wirePerWh);
  }

  private static double most(double[] values) {
    double most = Double.NEGATIVE_INFINITY;
    for (double value : values) {
      most = Math.max(most, value);
    }
    return most;
  }

  private static double least(double[] values) {
    double least = Double.POSITIVE_INFINITY;
    for (double value : values) {
      least = Math.min(least, value);
    }
    return least;
  }

  /** Not less than the need of any lane. */
  double mostNeedWh(double acWh, double restWh) {
    double into = acWh + acWh * (mostLinear + acWh * mostQuadraticPerWh);
    return restWh + into + into * into * mostWirePerWh;
  }

  /** Learns what is the same in every lane of an hour whose need lies between these. */
  void look(double solarWh, double leastNeedWh, double mostNeedWh, double accepted, double locked) {
    double leastSolarWh = solarWh * leastFactor, mostSolarWh = solarWh * mostFactor;
    allRise = leastSolarWh >= mostNeedWh;
    allFall = mostSolarWh < leastNeedWh;
    isFree =
        locked <= 0.0
            && mostSolarWh - leastNeedWh <= leastInWh * accepted
            && mostNeedWh - leastSolarWh <= leastOutWh;
  }

  /** In this hour every lane is served by the bus. */
  void nothingLacks() {
    if (mayLack) {
      Arrays.fill(lackWh, 0.0);
      Arrays.fill(unmetWh, 0.0);
      mayLack = false;
    }
  }

  private double[] array() {
    return new double[width];
  }

  private void set(int j, Lane lane) {
    BankLimits bank = lane.design().bank();
    InverterLimits inverter = lane.design().inverter();
    solarFactor[j] = lane.solarFactor();
    ownDrawWh[j] = lane.ownDrawWh();
    windowWh[j] = bank.windowWh();
    mostInWh[j] = Math.min(bank.mostInWh(), NO_LIMIT_WH);
    mostOutWh[j] = Math.min(bank.mostOutWh(), NO_LIMIT_WH);
    kept[j] = bank.keptPerHourShare();
    etaIn[j] = bank.chargeEfficiency();
    perIn[j] = 1.0 / etaIn[j];
    etaOut[j] = bank.dischargeEfficiency();
    perOut[j] = 1.0 / etaOut[j];
    mean[j] = 0.5 * (etaIn[j] + perOut[j]);
    half[j] = 0.5 * (etaIn[j] - perOut[j]);
    mostAcWh[j] = Math.min(inverter.continuousW(), NO_LIMIT_WH);
    linear[j] = inverter.linearLossShare();
    quadraticPerWh[j] = inverter.quadraticLossShare() / inverter.continuousW();
    wirePerWh[j] = inverter.wireLossSharePerW();
  }

  void clear() {
    for (double[] sum :
        new double[][] {
          emptyWh, rateWh, inverterWh, curtailedWh, bankOutWh, unmetHours, longestHours
        }) {
      Arrays.fill(sum, 0.0);
    }
    Arrays.fill(lowestWh, NO_LIMIT_WH);
  }

  void fillUp() {
    System.arraycopy(windowWh, 0, chargeWh, 0, width);
    Arrays.fill(run, 0.0);
    isServed = true;
  }
}
