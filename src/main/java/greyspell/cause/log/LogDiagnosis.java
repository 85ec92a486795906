package greyspell.cause.log;

import greyspell.cause.log.Finding.About;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * All that the hours of a log say, read on a clock that has been put right.
 *
 * @param sun null without the weather of the same weeks, or without solar power in the log
 * @param load null without load in the log
 * @param bank null without charge in the log
 * @param lightsOut hours in which the house got nothing
 * @param findings whatever could be looked at, told or not
 * @param byHour the day's 24 hours
 */
public record LogDiagnosis(
    @Nullable SunFit sun,
    @Nullable LoadCompared load,
    @Nullable BankFit bank,
    LightsOut lightsOut,
    List<Finding> findings,
    List<HourOfDay> byHour) {
  /** Reads everything. */
  public static LogDiagnosis of(Weeks weeks) {
    boolean isSolarSeen = Weeks.isAnyKnown(weeks.of.solarWh);
    boolean isChargeSeen = Weeks.isAnyKnown(weeks.of.chargeShare);
    SunFit sun = weeks.hasWeather() && isSolarSeen && isChargeSeen ? SunFit.of(weeks) : null;
    LoadCompared load = LoadCompared.of(weeks);
    boolean isFlowSeen = isSolarSeen || Weeks.isAnyKnown(weeks.of.batteryWh);
    BankFit bank = isChargeSeen && isFlowSeen ? BankFit.of(weeks, load != null) : null;
    return new LogDiagnosis(
        sun, load, bank, weeks.lightsOut(), findings(sun, load, bank), byHour(weeks, sun));
  }

  /** The clock alone, before anything else is read; null without weather or with too little sun. */
  public static @Nullable ClockFit clock(Weeks weeks) {
    return weeks.hasWeather() ? ClockFit.find(weeks) : null;
  }

  /** Hours in which the panels gave all they could. */
  public static boolean[] freeHours(Weeks weeks) {
    return weeks.hasWeather() ? FreeHours.of(weeks).isFree : new boolean[weeks.hours];
  }

  private static List<Finding> findings(
      @Nullable SunFit sun, @Nullable LoadCompared load, @Nullable BankFit bank) {
    var all = new ArrayList<Finding>();
    if (sun != null) {
      all.add(Finding.of(About.ARRAY, sun.factor()));
      Shade shade = sun.shade();
      if (shade != null) {
        all.add(Finding.of(About.SHADE, shade.lostShare()));
      }
    }
    if (load != null) {
      all.add(Finding.of(About.LOAD, load.factor()));
      all.add(Finding.of(About.ALWAYS_ON_LOAD, load.alwaysOnW()));
    }
    if (bank != null) {
      all.add(
          Finding.of(
              load == null ? About.DRAW : About.STANDBY,
              load == null ? bank.drawFactor() : bank.alwaysOnW()));
      all.add(Finding.of(About.BANK, bank.capacityFactor()));
      all.add(Finding.of(About.CHARGING, bank.chargeFactor()));
    }
    return List.copyOf(all);
  }

  /** The finding about something; null if it was not looked at. */
  public @Nullable Finding about(About about) {
    for (Finding finding : findings) {
      if (finding.about() == about) {
        return finding;
      }
    }
    return null;
  }

  private static List<HourOfDay> byHour(Weeks weeks, @Nullable SunFit sun) {
    var all = new ArrayList<HourOfDay>();
    double[][] clear = sun == null ? new double[0][] : SunFit.clearByHour(weeks);
    double[][] load = LoadCompared.byHour(weeks);
    for (int k = 0; k < 24; k++) {
      all.add(
          new HourOfDay(
              k,
              clear.length == 0 ? Double.NaN : clear[k][0],
              clear.length == 0 ? 0 : (int) clear[k][1],
              load[k][0],
              load[k][1]));
    }
    return List.copyOf(all);
  }
}
