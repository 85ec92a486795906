package greyspell.sky;

import greyspell.calendar.HourCalendar;
import greyspell.quantity.Check;
import java.time.LocalDate;

/**
 * Where the sun stands in each hour of a calendar, and for how much of the hour it is up.
 *
 * <pre>
 * w  = 15 (UT - 12 h) + equation of time + longitude      hour angle at the middle of the hour
 * sunlit part = that part of w - 7.5 .. w + 7.5 deg in which the sun's centre is above the level
 * position    = direction ({@link SunGeometry}) in the middle of the sunlit part
 * parallax    : up' = up - p (1 - up^2), the sideways parts times (1 + p up), p = 8.794"
 * </pre>
 *
 * <p>An hour in which the sun rises or sets is described by its sunlit part alone; where the sun
 * grazes the level at midnight and an hour has two such parts, by the longer. At night all values
 * are 0. No refraction: the sun is up when its centre is above the true level, some minutes later
 * and earlier than the eye sees it; what light a measurement has in those minutes is sky light.
 * Within 0.003 degree of the algorithm in {@link SunPosition} from 1990 to 2050 (SunTableTest,
 * SunPathTest). A typical year has the sun of the year that it is dated by.
 */
public final class SunPath {
  private static final double HALF_HOUR_RAD = Math.toRadians(7.5);
  private static final double HOUR_RAD = 2.0 * HALF_HOUR_RAD;
  private static final double TURN_RAD = 2.0 * Math.PI;
  // some milliseconds of sun are none
  private static final double LEAST_SHARE = 1e-6;

  private final HourCalendar calendar;
  private final double latitudeDeg;
  private final double longitudeDeg;
  private final double utcOffsetH;
  private final double[] sunlitShare;
  private final double[] cosZenith;
  private final double[] zenithDeg;
  private final double[] east;
  private final double[] north;
  private final double[] extraterrestrialNormalWm2;
  // for the horizon: the middle of the sunlit part
  private final double[] sinDeclination;
  private final double[] hourAngleRad;

  public static SunPath of(Site site, HourCalendar calendar) {
    return of(site.latitudeDeg(), site.longitudeDeg(), site.utcOffsetH(), calendar);
  }

  public static SunPath of(
      double latitudeDeg, double longitudeDeg, double utcOffsetH, HourCalendar calendar) {
    Check.within("latitudeDeg", latitudeDeg, -90.0, 90.0);
    Check.within("longitudeDeg", longitudeDeg, -180.0, 180.0);
    // a day to either side lets a clock be tried that is not the site's
    Check.within("utcOffsetH", utcOffsetH, -24.0, 24.0);
    return new SunPath(latitudeDeg, longitudeDeg, utcOffsetH, calendar);
  }

  private SunPath(
      double latitudeDeg, double longitudeDeg, double utcOffsetH, HourCalendar calendar) {
    this.calendar = calendar;
    this.latitudeDeg = latitudeDeg;
    this.longitudeDeg = longitudeDeg;
    this.utcOffsetH = utcOffsetH;
    int hours = calendar.hours();
    sunlitShare = new double[hours];
    cosZenith = new double[hours];
    zenithDeg = new double[hours];
    east = new double[hours];
    north = new double[hours];
    extraterrestrialNormalWm2 = new double[hours];
    sinDeclination = new double[hours];
    hourAngleRad = new double[hours];
    fill(hours);
  }

  private void fill(int hours) {
    double phi = Math.toRadians(latitudeDeg);
    double sinPhi = Math.sin(phi);
    double cosPhi = Math.cos(phi);
    long firstDay = LocalDate.of(calendar.firstYear(), 1, 1).toEpochDay();
    SunTable table = SunTable.of(firstDay, hours / 24 + 1);
    // within half a day declination and equation of time run straight to 0.0003 degree
    double sinDeltaEnd = 0.0;
    double cosDeltaEnd = 0.0;
    double offEnd = 0.0;
    for (int half = 0; half <= hours / 12; half++) {
      double utcDays = firstDay + (half * 12.0 - utcOffsetH) / 24.0;
      double sinDeltaStart = sinDeltaEnd;
      double cosDeltaStart = cosDeltaEnd;
      double offStart = offEnd;
      double delta = table.declinationRad(utcDays);
      sinDeltaEnd = Math.sin(delta);
      cosDeltaEnd = Math.cos(delta);
      offEnd = table.equationOfTimeRad(utcDays) + Math.toRadians(longitudeDeg - 15.0 * utcOffsetH);
      for (int i = 0; half > 0 && i < 12; i++) {
        double share = (i + 0.5) / 12.0;
        int h = (half - 1) * 12 + i;
        double w = (h % 24 + 0.5 - 12.0) * HOUR_RAD + offStart + (offEnd - offStart) * share;
        fillHour(
            h,
            sinPhi,
            cosPhi,
            sinDeltaStart + (sinDeltaEnd - sinDeltaStart) * share,
            cosDeltaStart + (cosDeltaEnd - cosDeltaStart) * share,
            w - TURN_RAD * Math.rint(w / TURN_RAD),
            (sinDeltaEnd - sinDeltaStart) / 12.0,
            // the sun's own hour is up to half a second longer or shorter than the clock's
            HALF_HOUR_RAD + (offEnd - offStart) / 24.0);
      }
    }
    for (int day = 0; day < hours / 24; day++) {
      double normal = Extraterrestrial.normalWm2(calendar.dayOfYear(day * 24));
      for (int h = day * 24; h < day * 24 + 24; h++) {
        if (sunlitShare[h] > 0.0) {
          extraterrestrialNormalWm2[h] = normal;
        }
      }
    }
  }

  private void fillHour(
      int h,
      double sinPhi,
      double cosPhi,
      double sinDeltaMiddle,
      double cosDeltaMiddle,
      double w,
      double sinDeltaPerH,
      double halfHour) {
    double sinDelta = sinDeltaMiddle;
    double cosDelta = cosDeltaMiddle;
    double cosW = Math.cos(w);
    double swing = cosPhi * cosDelta;
    double height = sinPhi * sinDelta + swing * cosW - SunPosition.PARALLAX_RAD;
    double margin = swing * halfHour;
    if (height < -margin) {
      return;
    }
    double middle = w;
    double share = 1.0;
    if (height < margin) {
      double ws =
          SunGeometry.sunsetHourAngleRad(
              sinPhi, cosPhi, sinDelta, cosDelta, SunPosition.PARALLAX_RAD);
      if (ws <= 0.0) {
        return;
      }
      if (ws < Math.PI) {
        double from = w - halfHour;
        double to = w + halfHour;
        double start = from > -ws ? from : -ws;
        double end = to < ws ? to : ws;
        double sunlit = end > start ? end - start : 0.0;
        middle = 0.5 * (start + end);
        // an hour across midnight, into which evening and morning sun may both fall
        double over = 0.0;
        double overMiddle = 0.0;
        if (to > Math.PI && to - TURN_RAD > -ws) {
          over = to - TURN_RAD + ws;
          overMiddle = -ws + 0.5 * over;
        } else if (from < -Math.PI && from + TURN_RAD < ws) {
          over = ws - from - TURN_RAD;
          overMiddle = ws - 0.5 * over;
        }
        if (over > sunlit) {
          middle = overMiddle;
        }
        share = 0.5 * (sunlit + over) / halfHour;
        share = share < 1.0 ? share : 1.0;
        if (share < LEAST_SHARE) {
          return;
        }
        cosW = Math.cos(middle);
        double laterH = (middle - w) / HOUR_RAD;
        if (laterH > -1.0 && laterH < 1.0) {
          sinDelta += sinDeltaPerH * laterH;
          cosDelta = Math.sqrt(1.0 - sinDelta * sinDelta);
        }
      }
    }
    double up = SunGeometry.up(sinPhi, cosPhi, sinDelta, cosDelta, cosW);
    double sideways = 1.0 + SunPosition.PARALLAX_RAD * up;
    up -= SunPosition.PARALLAX_RAD * (1.0 - up * up);
    if (up <= 0.0) {
      return;
    }
    sunlitShare[h] = share;
    cosZenith[h] = up < 1.0 ? up : 1.0;
    east[h] = sideways * SunGeometry.east(cosDelta, Math.sin(middle));
    north[h] = sideways * SunGeometry.north(sinPhi, cosPhi, sinDelta, cosDelta, cosW);
    zenithDeg[h] = Math.toDegrees(Math.acos(cosZenith[h]));
    sinDeclination[h] = sinDelta;
    hourAngleRad[h] = middle;
  }

  /**
   * The same place and hours, seen by a clock that shows this much less: what the sun does in hour
   * {@code h} of the result it does {@code laterH} after hour {@code h} here.
   */
  SunPath later(double laterH) {
    return new SunPath(latitudeDeg, longitudeDeg, utcOffsetH - laterH, calendar);
  }

  /** The same place and hours with the sun of one day, counted from 0, on every day. */
  SunPath everyDayLike(int day) {
    SunPath alike = later(0.0);
    double[][] from = columns(), to = alike.columns();
    for (int c = 0; c < from.length; c++) {
      for (int d = 0; d < calendar.days(); d++) {
        System.arraycopy(from[c], day * 24, to[c], d * 24, 24);
      }
    }
    return alike;
  }

  private double[][] columns() {
    return new double[][] {
      sunlitShare,
      cosZenith,
      zenithDeg,
      east,
      north,
      extraterrestrialNormalWm2,
      sinDeclination,
      hourAngleRad
    };
  }

  /**
   * Share of each hour's sunlit part in which the sun stands above the land. An hour in which it
   * crosses the skyline is looked at four times.
   */
  double[] clearOf(Horizon horizon) {
    int hours = calendar.hours();
    var visible = new double[hours];
    double phi = Math.toRadians(latitudeDeg);
    double sinPhi = Math.sin(phi);
    double cosPhi = Math.cos(phi);
    // in half an hour the sun climbs or sinks by at most 7.5 degrees
    double safeUp = Math.sin(Math.toRadians(Math.min(90.0, horizon.highestDeg() + 8.0)));
    for (int h = 0; h < hours; h++) {
      if (sunlitShare[h] == 0.0) {
        continue;
      }
      if (cosZenith[h] > safeUp) {
        visible[h] = 1.0;
        continue;
      }
      double sinDelta = sinDeclination[h];
      double cosDelta = Math.sqrt(1.0 - sinDelta * sinDelta);
      double step = sunlitShare[h] * HOUR_RAD / 4.0;
      int clear = 0;
      for (int i = 0; i < 4; i++) {
        double w = hourAngleRad[h] + (i - 1.5) * step;
        double cosW = Math.cos(w);
        double up = SunGeometry.up(sinPhi, cosPhi, sinDelta, cosDelta, cosW);
        double towards =
            SunGeometry.azimuthDeg(
                SunGeometry.east(cosDelta, Math.sin(w)),
                SunGeometry.north(sinPhi, cosPhi, sinDelta, cosDelta, cosW));
        if (Math.toDegrees(Math.asin(up < 1.0 ? up : 1.0)) >= horizon.heightDeg(towards)) {
          clear++;
        }
      }
      visible[h] = clear / 4.0;
    }
    return visible;
  }

  /** What the clock shows at the sun's noon less 12 h, in the year's mean; -12 to 12. */
  double clockMinusSunH() {
    double aheadH = utcOffsetH - longitudeDeg / 15.0;
    return aheadH - 24.0 * Math.rint(aheadH / 24.0);
  }

  public HourCalendar calendar() {
    return calendar;
  }

  public int hours() {
    return calendar.hours();
  }

  /** Share of the hour in which the sun is up, 0 to 1. */
  public double[] sunlitShare() {
    return sunlitShare;
  }

  /** In the middle of the sunlit part; 0 at night. */
  public double[] cosZenith() {
    return cosZenith;
  }

  /** In the middle of the sunlit part; 0 at night (look at {@link #sunlitShare} first). */
  public double[] zenithDeg() {
    return zenithDeg;
  }

  /** Clockwise from true north, in the middle of the sunlit part; worked out when asked. */
  public double azimuthDeg(int hour) {
    return SunGeometry.azimuthDeg(east[hour], north[hour]);
  }

  /** Light above the air, square to the beam, while the sun is up; 0 at night. */
  public double[] extraterrestrialNormalWm2() {
    return extraterrestrialNormalWm2;
  }

  /** Eastward part of the direction to the sun. */
  double[] east() {
    return east;
  }

  /** Northward part of the direction to the sun. */
  double[] north() {
    return north;
  }

  /** Light above the air on the level, mean of the whole hour. */
  double extraterrestrialHorizontalWm2(int hour) {
    return extraterrestrialNormalWm2[hour] * cosZenith[hour] * sunlitShare[hour];
  }
}
