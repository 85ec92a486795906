package greyspell.balance;

/** Energy that waits, by the day on which it was put off. */
final class Backlog {
  private final double[] byDayWh;
  private int today;

  Backlog(int longestWaitD) {
    byDayWh = new double[longestWaitD + 1];
  }

  double sumWh() {
    double sum = 0.0;
    for (double wh : byDayWh) {
      sum += wh;
    }
    return sum;
  }

  void addWh(double wh) {
    byDayWh[today] += wh;
  }

  /** The oldest first; no more than the sum. */
  void takeWh(double wh) {
    double left = wh;
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
    return dropped;
  }
}
