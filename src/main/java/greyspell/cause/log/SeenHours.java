package greyspell.cause.log;

import greyspell.weather.MonitorColumn;
import greyspell.weather.MonitorLog;
import java.util.Arrays;

/**
 * A monitor's log on the hours of the site's standard time: energy of each hour, and the charge
 * between hours. NaN is what the log does not tell; an hour is told when three quarters of it are.
 */
public final class SeenHours {
  private static final int MINUTES = 60;
  private static final double ENOUGH_MINUTES = 45.0;

  /** Two readings of the charge further apart than this say nothing of a moment between. */
  private static final long FARTHEST_MINUTES = 90;

  private final long firstHour;
  private final double[] chargeShare;
  private final double[] solarWh;
  private final double[] loadWh;
  private final double[] batteryWh;
  private final double[] generatorWh;

  private SeenHours(long firstHour, int hours) {
    this.firstHour = firstHour;
    chargeShare = new double[hours + 1];
    Arrays.fill(chargeShare, Double.NaN);
    solarWh = new double[hours];
    loadWh = new double[hours];
    batteryWh = new double[hours];
    generatorWh = new double[hours];
  }

  /**
   * Lays a log on hours.
   *
   * @param utcOffsetH of the hours' clock
   * @param shiftMinutes to be added to the log's times
   * @param contentWh of the bank, for a charge in Wh
   */
  public static SeenHours of(
      MonitorLog log, double utcOffsetH, long shiftMinutes, double contentWh) {
    long ahead = Math.round(utcOffsetH * MINUTES) + shiftMinutes;
    long first = Math.floorDiv(log.startMinute(0) + ahead, (long) MINUTES);
    long end =
        Math.floorDiv(
            log.startMinute(log.rows() - 1) + ahead + log.stepMinutes() - 1, (long) MINUTES);
    var seen = new SeenHours(first, (int) (end - first) + 1);
    seen.sum(log, MonitorColumn.SOLAR, ahead, seen.solarWh);
    seen.sum(log, MonitorColumn.LOAD, ahead, seen.loadWh);
    seen.sum(log, MonitorColumn.GENERATOR, ahead, seen.generatorWh);
    seen.sumBattery(log, ahead);
    seen.charge(log, ahead, log.isChargeInWh() ? contentWh : 1.0);
    return seen;
  }

  private interface Power {
    double at(int row);
  }

  private void sum(MonitorLog log, MonitorColumn column, long ahead, double[] toWh) {
    sum(log, row -> log.value(column, row), ahead, toWh);
  }

  /** As it stands, or voltage times current. */
  private void sumBattery(MonitorLog log, long ahead) {
    if (log.has(MonitorColumn.BATTERY)) {
      sum(log, MonitorColumn.BATTERY, ahead, batteryWh);
    } else {
      sum(
          log,
          row -> log.value(MonitorColumn.VOLTAGE, row) * log.value(MonitorColumn.CURRENT, row),
          ahead,
          batteryWh);
    }
  }

  /** Mean power of each hour by the minutes that rows cover; a row may lie across two hours. */
  private void sum(MonitorLog log, Power power, long ahead, double[] toWh) {
    var minutes = new double[toWh.length];
    for (int row = 0; row < log.rows(); row++) {
      double w = power.at(row);
      if (Double.isNaN(w)) {
        continue;
      }
      long from = log.startMinute(row) + ahead - firstHour * MINUTES;
      long to = from + log.stepMinutes();
      for (long at = from; at < to; ) {
        int hour = (int) (at / MINUTES);
        long next = Math.min(to, (hour + 1L) * MINUTES);
        if (hour < toWh.length) {
          toWh[hour] += w * (next - at);
          minutes[hour] += next - at;
        }
        at = next;
      }
    }
    for (int h = 0; h < toWh.length; h++) {
      toWh[h] = minutes[h] >= ENOUGH_MINUTES ? toWh[h] / minutes[h] : Double.NaN;
    }
  }

  /** Straight lines between readings. */
  private void charge(MonitorLog log, long ahead, double perShare) {
    long before = Long.MIN_VALUE;
    double shareBefore = Double.NaN;
    for (int row = 0; row < log.rows(); row++) {
      double read = log.value(MonitorColumn.CHARGE, row);
      if (Double.isNaN(read)) {
        continue;
      }
      double share = read / perShare;
      long at = log.startMinute(row) + ahead + log.chargeAtMinutes() - firstHour * MINUTES;
      boolean isNear = before != Long.MIN_VALUE && at - before <= FARTHEST_MINUTES;
      long from = isNear ? before + 1 : at;
      for (long b = Math.floorDiv(from + MINUTES - 1, (long) MINUTES); b * MINUTES <= at; b++) {
        if (b >= 0 && b < chargeShare.length) {
          chargeShare[(int) b] =
              isNear
                  ? shareBefore + (share - shareBefore) * (b * MINUTES - before) / (at - before)
                  : share;
        }
      }
      before = at;
      shareBefore = share;
    }
  }

  public int hours() {
    return solarWh.length;
  }

  /** Hours since 1970 on the site's clock. */
  public long firstHour() {
    return firstHour;
  }

  /** Charge of the bank at the start of each hour, and at the end of the last. */
  public double[] chargeShare() {
    return chargeShare;
  }

  public double[] solarWh() {
    return solarWh;
  }

  public double[] loadWh() {
    return loadWh;
  }

  /** Into the bank, below zero out of it. */
  public double[] batteryWh() {
    return batteryWh;
  }

  public double[] generatorWh() {
    return generatorWh;
  }
}
