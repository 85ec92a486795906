package greyspell.load;

/** Fills the holes of a log's hours; {@link LoadLog} tells the rules. NaN is missing. */
final class LogGaps {
  private static final int HOURS_IN_WEEK = 168;
  private static final int LONGEST_LINE_H = 3;
  private static final int FARTHEST_WEEKS = 8;

  private LogGaps() {}

  static void fill(double[] hours) {
    fillShort(hours);
    fillLong(hours);
  }

  static int missing(double[] hours) {
    int missing = 0;
    for (double wh : hours) {
      if (Double.isNaN(wh)) {
        missing++;
      }
    }
    return missing;
  }

  private static void fillShort(double[] hours) {
    int h = 0;
    while (h < hours.length) {
      if (!Double.isNaN(hours[h])) {
        h++;
        continue;
      }
      int end = h;
      while (end < hours.length && Double.isNaN(hours[end])) {
        end++;
      }
      if (h > 0 && end < hours.length && end - h <= LONGEST_LINE_H) {
        double before = hours[h - 1];
        double perHour = (hours[end] - before) / (end - h + 1);
        for (int i = h; i < end; i++) {
          hours[i] = before + perHour * (i - h + 1);
        }
      }
      h = end;
    }
  }

  private static void fillLong(double[] hours) {
    double[] measured = hours.clone();
    for (int h = 0; h < hours.length; h++) {
      if (Double.isNaN(hours[h])) {
        hours[h] = likely(measured, h);
      }
    }
  }

  private static double likely(double[] measured, int hour) {
    for (int weeks = 1; weeks <= FARTHEST_WEEKS; weeks++) {
      double before = at(measured, hour - weeks * HOURS_IN_WEEK);
      double after = at(measured, hour + weeks * HOURS_IN_WEEK);
      if (!Double.isNaN(before) && !Double.isNaN(after)) {
        return 0.5 * (before + after);
      }
      if (!Double.isNaN(before) || !Double.isNaN(after)) {
        return Double.isNaN(before) ? after : before;
      }
    }
    double sameWeekday = mean(measured, hour % HOURS_IN_WEEK, HOURS_IN_WEEK);
    if (!Double.isNaN(sameWeekday)) {
      return sameWeekday;
    }
    double sameHour = mean(measured, hour % 24, 24);
    return Double.isNaN(sameHour) ? mean(measured, 0, 1) : sameHour;
  }

  private static double at(double[] values, int index) {
    return index >= 0 && index < values.length ? values[index] : Double.NaN;
  }

  private static double mean(double[] values, int first, int step) {
    double sum = 0.0;
    int count = 0;
    for (int i = first; i < values.length; i += step) {
      if (!Double.isNaN(values[i])) {
        sum += values[i];
        count++;
      }
    }
    return count == 0 ? Double.NaN : sum / count;
  }
}
