package greyspell.weather.ensemble;

/** The days of a year without a leap day, January first, and where its winter begins. */
final class YearDays {
  static final int DAYS = 365;
  static final int HOURS_PER_DAY = 24;
  static final int MONTHS = 12;

  /** 1 July: a year of the north begins here, in summer, so that no winter is cut in two. */
  static final int NORTHERN_SEAM_DAY = 181;

  private static final int[] LENGTHS = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

  private YearDays() {}

  /** Day counted from 0 to month counted from 0. */
  static int[] monthOfDay() {
    var month = new int[DAYS];
    int day = 0;
    for (int m = 0; m < MONTHS; m++) {
      for (int d = 0; d < LENGTHS[m]; d++) {
        month[day++] = m;
      }
    }
    return month;
  }

  static int length(int month) {
    return LENGTHS[month];
  }

  static int seamDay(boolean isNorthern) {
    return isNorthern ? NORTHERN_SEAM_DAY : 0;
  }

  /**
   * A value for each day on straight lines through the middles of the months, round the year, so
   * drawn that the mean over each month's days is the given one.
   */
  static double[] course(double[] means) {
    double[] nodes = means.clone();
    int[] month = monthOfDay();
    double[] course = through(nodes);
    for (int round = 0; round < 60; round++) {
      var sums = new double[MONTHS];
      for (int day = 0; day < DAYS; day++) {
        sums[month[day]] += course[day];
      }
      for (int m = 0; m < MONTHS; m++) {
        nodes[m] += means[m] - sums[m] / LENGTHS[m];
      }
      course = through(nodes);
    }
    return course;
  }

  private static double[] through(double[] nodes) {
    var course = new double[DAYS];
    int first = 0;
    for (int m = 0; m < MONTHS; m++) {
      for (int d = 0; d < LENGTHS[m]; d++) {
        double fromMiddle = d + 0.5 - 0.5 * LENGTHS[m];
        int other = Math.floorMod(fromMiddle < 0.0 ? m - 1 : m + 1, MONTHS);
        double share = Math.abs(fromMiddle) / (0.5 * (LENGTHS[m] + LENGTHS[other]));
        course[first + d] = nodes[m] + share * (nodes[other] - nodes[m]);
      }
      first += LENGTHS[m];
    }
    return course;
  }
}
