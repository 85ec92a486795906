package greyspell.balance;

/** Energy that waits, by the day on which it was put off. */
final class Backlog {
  private final double[] byDayWh;
  private int today;
  private double sumWh;
  private boolean isSummed = true;

  Backlog(int longestWaitD) {
    byDayWh = new double[longestWaitD + 1];
  }

  /** Asked several times an hour, and mostly unchanged. */
  double sumWh() {
    if (!isSummed) {
      double sum = 0.0;
      for (double wh : byDayWh) {
        sum += wh;
      }
      sumWh = sum;
      isSummed = true;
    }
    return sumWh;
  }

  /** Laps begin with the same day, so which one is today need not be told. */
  void remember(double[] into, int at) {
    System.arraycopy(byDayWh, 0, into, at, byDayWh.length);
  }

  void addWh(double wh) {
    byDayWh[today] += wh;
    isSummed = false;
  }

  /** The oldest first; no more than the sum. */
  void takeWh(double wh) {
    double left = wh;
    isSummed &= !(wh > 0.0);
    for (int i = 1; i <= byDayWh.length && left > 0.0; i++) {
      int day = (today + i) % byDayWh.length;
      double now = left < byDayWh[day] ? left : byDayWh[day];
      byDayWh[day] -= now;
      left -= now;
    }
  }

  /** Begins a day; returns what has waited too long and is dropped. */
  double nextDay() {
    today = (today + 1) % byDayWh.length;
    double dropped = byDayWh[today];
    byDayWh[today] = 0.0;
    isSummed = false;
    return dropped;
  }
}
