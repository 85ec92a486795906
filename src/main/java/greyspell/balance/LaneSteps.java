package greyspell.balance;

import static java.lang.Math.abs;
import static java.lang.Math.fma;

/**
 * The short loops of {@link LaneLoop}: each over all lanes of a block, with few enough operations
 * that the virtual machine turns it into vector instructions. The equations stand there.
 */
final class LaneSteps {
  /** An hour is unmet from {@link UnmetLoop#LEAST_UNMET_WH} on and up to 1 GWh: 1, else 0. */
  private static final double PER_WH = 1e-9, LEAST = UnmetLoop.LEAST_UNMET_WH * PER_WH;

  private LaneSteps() {}

  static void add(double[] sum, double wh) {
    for (int j = 0; j < sum.length; j++) {
      sum[j] += wh;
    }
  }

  static void surplus(double[] surplusWh, double[] solarFactor, double solarWh, double needWh) {
    for (int j = 0; j < surplusWh.length; j++) {
      surplusWh[j] = fma(solarWh, solarFactor[j], -needWh);
    }
  }

  static void drawnSurplus(
      double[] surplusWh, double[] solarFactor, double[] ownDrawWh, double solarWh, double needWh) {
    for (int j = 0; j < surplusWh.length; j++) {
      surplusWh[j] = fma(solarWh, solarFactor[j], -(needWh + ownDrawWh[j]));
    }
  }

  /** What a Wh lacking on the bus leaves unserved, where each lane draws something of its own. */
  static void drawnShare(double[] servedShare, double[] ownDrawWh, double servedWh, double needWh) {
    for (int j = 0; j < servedShare.length; j++) {
      servedShare[j] = servedWh / (needWh + ownDrawWh[j] + Double.MIN_NORMAL);
    }
  }

  /** Own inverters: AC within their limit, and what is over it. */
  static void throughInverter(
      double[] acWh, double[] overWh, double[] mostAcWh, double[] inverterWh, double askedWh) {
    for (int j = 0; j < acWh.length; j++) {
      double d = askedWh - mostAcWh[j], twice = d + abs(d);
      acWh[j] = fma(-0.5, twice, askedWh);
      overWh[j] = 0.5 * twice;
      inverterWh[j] = fma(0.5, twice, inverterWh[j]);
    }
  }

  /** Own inverters: the need of the bus. */
  static void need(
      double[] needWh,
      double[] acWh,
      double[] linear,
      double[] quadraticPerWh,
      double[] wirePerWh,
      double restWh) {
    for (int j = 0; j < needWh.length; j++) {
      double ac = acWh[j], into = ac + ac * fma(ac, quadraticPerWh[j], linear[j]);
      needWh[j] = fma(into * into, wirePerWh[j], into + restWh);
    }
  }

  static void ownSurplus(
      double[] surplusWh, double[] solarFactor, double[] needWh, double solarWh) {
    for (int j = 0; j < surplusWh.length; j++) {
      surplusWh[j] = fma(solarWh, solarFactor[j], -needWh[j]);
    }
  }

  static void ownShare(double[] servedShare, double[] acWh, double[] needWh, double dcWh) {
    for (int j = 0; j < servedShare.length; j++) {
      servedShare[j] = (dcWh + acWh[j]) / (needWh[j] + Double.MIN_NORMAL);
    }
  }

  /** Every lane charges. */
  static void rise(
      double[] surplusWh,
      double[] mostInWh,
      double[] etaIn,
      double[] kept,
      double[] windowWh,
      double[] chargeWh,
      double chargeShare) {
    for (int j = 0; j < surplusWh.length; j++) {
      double x = surplusWh[j], d = fma(-chargeShare, mostInWh[j], x);
      x = fma(-0.5, d + abs(d), x);
      double s = fma(x, etaIn[j], chargeWh[j] * kept[j]), e = s - windowWh[j];
      chargeWh[j] = fma(-0.5, e + abs(e), s);
    }
  }

  /** The flow into or out of the bank within its limits; what is beyond the limits. */
  static void flow(
      double[] surplusWh,
      double[] mostInWh,
      double[] mostOutWh,
      double[] flowWh,
      double[] beyondWh,
      double chargeShare) {
    for (int j = 0; j < surplusWh.length; j++) {
      double y = surplusWh[j], d = -mostOutWh[j] - y, w = d + abs(d), x = fma(0.5, w, y);
      double e = fma(-chargeShare, mostInWh[j], x);
      beyondWh[j] = w;
      flowWh[j] = fma(-0.5, e + abs(e), x);
    }
  }

  /** Books what is lacking, given twice. */
  static void book(
      double[] twiceWh, double[] emptyWh, double[] unmetHours, double servedShare, double overWh) {
    double share = 0.5 * servedShare, over = fma(overWh, PER_WH, -LEAST);
    for (int j = 0; j < twiceWh.length; j++) {
      double u = twiceWh[j] * share;
      emptyWh[j] += u;
      unmetHours[j] += Math.ceil(fma(u, PER_WH, over));
    }
  }

  static void ownBook(
      double[] twiceWh,
      double[] emptyWh,
      double[] unmetHours,
      double[] servedShare,
      double[] overWh) {
    for (int j = 0; j < twiceWh.length; j++) {
      double u = 0.5 * twiceWh[j] * servedShare[j];
      emptyWh[j] += u;
      unmetHours[j] += Math.ceil(fma(u + overWh[j], PER_WH, -LEAST));
    }
  }

  // ---- with all sums ----

  static void riseAll(
      double[] surplusWh,
      double[] mostInWh,
      double[] etaIn,
      double[] kept,
      double[] chargeWh,
      double[] curtailedWh,
      double chargeShare,
      double availablePerBus) {
    double half = 0.5 * availablePerBus;
    for (int j = 0; j < surplusWh.length; j++) {
      double x = surplusWh[j], d = fma(-chargeShare, mostInWh[j], x), w = d + abs(d);
      x = fma(-0.5, w, x);
      chargeWh[j] = fma(x, etaIn[j], chargeWh[j] * kept[j]);
      curtailedWh[j] = fma(w, half, curtailedWh[j]);
    }
  }

  static void lowest(double[] chargeWh, double[] lowestWh) {
    for (int j = 0; j < chargeWh.length; j++) {
      double d = lowestWh[j] - chargeWh[j];
      lowestWh[j] = fma(-0.5, d + abs(d), lowestWh[j]);
    }
  }

  /** Holds the charge at the floor; twice what the bank lacks, on the bus. */
  static void holdLow(double[] etaOut, double[] chargeWh, double[] lackWh) {
    for (int j = 0; j < chargeWh.length; j++) {
      double low = lackWh[j];
      chargeWh[j] = fma(0.5, low, chargeWh[j]);
      lackWh[j] = low * etaOut[j];
    }
  }

  /** What the bank gives: the flow out of it less what it lacks. */
  static void give(double[] flowWh, double[] lackWh, double[] bankOutWh) {
    for (int j = 0; j < flowWh.length; j++) {
      double x = flowWh[j];
      bankOutWh[j] = fma(0.5, abs(x) - x - lackWh[j], bankOutWh[j]);
    }
  }

  /** Solar energy beyond the charge limit. */
  static void spare(
      double[] surplusWh,
      double[] flowWh,
      double[] beyondWh,
      double[] curtailedWh,
      double availablePerBus) {
    for (int j = 0; j < flowWh.length; j++) {
      double spare = fma(0.5, beyondWh[j], surplusWh[j]) - flowWh[j];
      curtailedWh[j] = fma(spare, availablePerBus, curtailedWh[j]);
    }
  }

  /** Books what is lacking by reason, both given twice. */
  static void bookReasons(
      double[] beyondWh,
      double[] lackWh,
      double[] rateWh,
      double[] emptyWh,
      double[] unmetWh,
      double servedShare) {
    double share = 0.5 * servedShare;
    for (int j = 0; j < lackWh.length; j++) {
      double rate = beyondWh[j] * share, empty = lackWh[j] * share;
      rateWh[j] += rate;
      emptyWh[j] += empty;
      unmetWh[j] = rate + empty;
    }
  }

  static void ownBookReasons(
      double[] beyondWh,
      double[] lackWh,
      double[] rateWh,
      double[] emptyWh,
      double[] unmetWh,
      double[] servedShare) {
    for (int j = 0; j < lackWh.length; j++) {
      double share = 0.5 * servedShare[j], rate = beyondWh[j] * share, empty = lackWh[j] * share;
      rateWh[j] += rate;
      emptyWh[j] += empty;
      unmetWh[j] = rate + empty;
    }
  }

  /** Every lane draws and no limit binds: leaves twice what is lacking on the bus. */
  static void fall(
      double[] surplusWh,
      double[] perOut,
      double[] etaOut,
      double[] kept,
      double[] chargeWh,
      double[] lackWh) {
    for (int j = 0; j < surplusWh.length; j++) {
      double s = fma(surplusWh[j], perOut[j], chargeWh[j] * kept[j]), low = abs(s) - s;
      chargeWh[j] = fma(0.5, low, s);
      lackWh[j] = low * etaOut[j];
    }
  }

  /** The charge after the flow, before floor and window hold it; twice what it is below 0. */
  static void reach(
      double[] flowWh,
      double[] mean,
      double[] half,
      double[] kept,
      double[] chargeWh,
      double[] lackWh) {
    for (int j = 0; j < flowWh.length; j++) {
      double x = flowWh[j];
      double s = fma(abs(x), half[j], fma(x, mean[j], chargeWh[j] * kept[j]));
      chargeWh[j] = s;
      lackWh[j] = abs(s) - s;
    }
  }

  /** The floor where cold locks a part of the window: the charge after rest, at most that part. */
  static void lock(
      double[] kept, double[] windowWh, double[] chargeWh, double[] floorWh, double lockedShare) {
    for (int j = 0; j < floorWh.length; j++) {
      double rest = chargeWh[j] * kept[j], d = fma(-lockedShare, windowWh[j], rest);
      floorWh[j] = fma(-0.5, d + abs(d), rest);
    }
  }

  /** Twice what the charge is below the floor. */
  static void below(double[] floorWh, double[] chargeWh, double[] lackWh) {
    for (int j = 0; j < floorWh.length; j++) {
      double low = floorWh[j] - chargeWh[j];
      lackWh[j] = low + abs(low);
    }
  }

  /** Holds the charge between floor and window; twice what is lacking in all. */
  static void hold(
      double[] windowWh, double[] etaOut, double[] chargeWh, double[] lackWh, double[] beyondWh) {
    for (int j = 0; j < chargeWh.length; j++) {
      double low = lackWh[j], t = fma(0.5, low, chargeWh[j]), e = t - windowWh[j];
      chargeWh[j] = fma(-0.5, e + abs(e), t);
      lackWh[j] = fma(low, etaOut[j], beyondWh[j]);
    }
  }

  /** Holds the charge below the window and books what is too much. */
  static void holdFull(
      double[] windowWh,
      double[] perIn,
      double[] chargeWh,
      double[] curtailedWh,
      double availablePerBus) {
    double half = 0.5 * availablePerBus;
    for (int j = 0; j < chargeWh.length; j++) {
      double s = chargeWh[j], e = s - windowWh[j], w = e + abs(e);
      chargeWh[j] = fma(-0.5, w, s);
      curtailedWh[j] = fma(w * perIn[j], half, curtailedWh[j]);
    }
  }

  /** 1 in lanes with an unmet hour, else 0. */
  static void mark(double[] unmetWh, double[] unmetHours, double[] isUnmet, double overWh) {
    double over = fma(overWh, PER_WH, -LEAST);
    for (int j = 0; j < unmetWh.length; j++) {
      double is = Math.ceil(fma(unmetWh[j], PER_WH, over));
      isUnmet[j] = is;
      unmetHours[j] += is;
    }
  }

  static void ownMark(double[] unmetWh, double[] unmetHours, double[] isUnmet, double[] overWh) {
    for (int j = 0; j < unmetWh.length; j++) {
      double is = Math.ceil(fma(unmetWh[j] + overWh[j], PER_WH, -LEAST));
      isUnmet[j] = is;
      unmetHours[j] += is;
    }
  }

  /** Unbroken runs of unmet hours. */
  static void count(double[] isUnmet, double[] run, double[] longestHours) {
    for (int j = 0; j < run.length; j++) {
      double is = isUnmet[j], r = fma(run[j], is, is), d = r - longestHours[j];
      run[j] = r;
      longestHours[j] = fma(-0.5, d - abs(d), r);
    }
  }
}
