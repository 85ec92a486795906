package greyspell.power;

import greyspell.calendar.HourCalendar;
import greyspell.quantity.Show;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What a second source gave, hour by hour: a small wind or water turbine, as measured or reckoned
 * elsewhere. An hour without a value is a gap and counts as nothing; gaps are named. Read by {@link
 * SourceLogReader}, laid over the years of the weather by {@link #on}.
 */
public final class SourceLog {
  private static final int DAYS_IN_LONGEST_MONTH = 31;
  private static final int GAPS_NAMED = 3;

  private final long firstHour;
  private final double[] powerW;

  private SourceLog(long firstHour, double[] powerW) {
    this.firstHour = firstHour;
    this.powerW = powerW;
  }

  /** Hours in a row without a value. */
  public record Gap(LocalDateTime start, int hours) {}

  /**
   * Hours in a row.
   *
   * @param firstHour hours from 1970-01-01 00:00 to the first one, local standard time
   * @param powerW mean power of each hour, NaN where there is none
   */
  static SourceLog of(long firstHour, double[] powerW) {
    return new SourceLog(firstHour, powerW);
  }

  public int hours() {
    return powerW.length;
  }

  public LocalDateTime start() {
    return at(0);
  }

  private LocalDateTime at(int hour) {
    long since = firstHour + hour;
    return LocalDate.ofEpochDay(Math.floorDiv(since, 24L))
        .atTime((int) Math.floorMod(since, 24L), 0);
  }

  /** Hours within the log that have no value. */
  public int missingHours() {
    int missing = 0;
    for (double w : powerW) {
      missing += Double.isNaN(w) ? 1 : 0;
    }
    return missing;
  }

  /** Every gap within the log, in order. */
  public List<Gap> gaps() {
    var gaps = new ArrayList<Gap>();
    for (int h = 0; h < powerW.length; h++) {
      int from = h;
      while (h < powerW.length && Double.isNaN(powerW[h])) {
        h++;
      }
      if (h > from) {
        gaps.add(new Gap(at(from), h - from));
      }
    }
    return gaps;
  }

  /**
   * Laid over the hours of a calendar: an hour that the log holds as it is; any other hour from the
   * same day and hour of the first year in the log that has it, 29 February from the 28th if need
   * be; nothing where the log has no such hour. A typical year takes every hour by day and hour.
   */
  public SourceHours on(HourCalendar calendar) {
    double[] byDate = byDate();
    var wh = new double[calendar.hours()];
    long first = LocalDate.of(calendar.firstYear(), 1, 1).toEpochDay() * 24L;
    int repeated = 0;
    int absent = 0;
    for (int h = 0; h < wh.length; h++) {
      long inLog = first + h - firstHour;
      boolean isHeld = !calendar.isTypical() && inLog >= 0 && inLog < powerW.length;
      double w;
      if (isHeld) {
        w = powerW[(int) inLog];
      } else {
        int month = calendar.month(h);
        int day = calendar.dayOfMonth(h);
        w = byDate[slot(month, day, h % 24)];
        if (Double.isNaN(w) && month == 2 && day == 29) {
          w = byDate[slot(month, 28, h % 24)];
        }
        repeated++;
      }
      if (Double.isNaN(w)) {
        absent++;
      } else {
        wh[h] = w;
      }
    }
    return new SourceHours(wh, repeated, absent, told(repeated, absent));
  }

  private double[] byDate() {
    var byDate = new double[12 * DAYS_IN_LONGEST_MONTH * 24];
    Arrays.fill(byDate, Double.NaN);
    for (int h = 0; h < powerW.length; h++) {
      LocalDateTime at = at(h);
      int slot = slot(at.getMonthValue(), at.getDayOfMonth(), at.getHour());
      if (Double.isNaN(byDate[slot])) {
        byDate[slot] = powerW[h];
      }
    }
    return byDate;
  }

  private static int slot(int month, int dayOfMonth, int hourOfDay) {
    return ((month - 1) * DAYS_IN_LONGEST_MONTH + dayOfMonth - 1) * 24 + hourOfDay;
  }

  /** What was done, in a sentence for the list of assumptions. */
  private String told(int repeated, int absent) {
    var text = new StringBuilder();
    text.append(hours()).append(" hours from ").append(Show.date(start().toLocalDate()));
    if (repeated > 0) {
      text.append("; ")
          .append(repeated)
          .append(" hours of the weather lie outside and take the same day and hour of the log");
    }
    List<Gap> gaps = gaps();
    for (int i = 0; i < gaps.size() && i < GAPS_NAMED; i++) {
      LocalDateTime start = gaps.get(i).start();
      text.append(i == 0 ? "; no value for " : ", ")
          .append(gaps.get(i).hours())
          .append(" h from ")
          .append(Show.date(start.toLocalDate()))
          .append(' ')
          .append(start.getHour())
          .append(":00");
    }
    if (gaps.size() > GAPS_NAMED) {
      text.append(" and ").append(gaps.size() - GAPS_NAMED).append(" more gaps");
    }
    if (absent > 0) {
      text.append("; ").append(absent).append(" hours without a value count as nothing");
    }
    return text.toString();
  }
}
