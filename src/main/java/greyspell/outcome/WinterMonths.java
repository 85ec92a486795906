package greyspell.outcome;

/**
 * The books of one winter by month, January first. The twelve months are those of the winter: in
 * the north January to June follow July to December.
 */
public final class WinterMonths {
  public static final int MONTHS = 12;

  private static final int SUMS = WinterSum.values().length;

  final double[] wh = new double[SUMS * MONTHS];
  final short[] unmetHours = new short[MONTHS];
  final byte[] unmetDays = new byte[MONTHS];
  final short[] generatorHours = new short[MONTHS];

  WinterMonths() {}

  static int place(WinterSum sum, int month) {
    return sum.ordinal() * MONTHS + month - 1;
  }

  /** Of a month, 1 to 12. */
  public double wh(WinterSum sum, int month) {
    return wh[place(sum, month)];
  }

  /** Of the whole winter. */
  public double wh(WinterSum sum) {
    double totalWh = 0.0;
    for (int month = 1; month <= MONTHS; month++) {
      totalWh += wh(sum, month);
    }
    return totalWh;
  }

  /** Hours of a month, 1 to 12, in which something asked for was not served. */
  public int unmetHours(int month) {
    return unmetHours[month - 1];
  }

  public int unmetHours() {
    return sum(unmetHours);
  }

  /** Days of a month, 1 to 12, with at least one such hour. */
  public int unmetDays(int month) {
    return unmetDays[month - 1];
  }

  public int unmetDays() {
    int days = 0;
    for (byte of : unmetDays) {
      days += of;
    }
    return days;
  }

  /** Hours of a month, 1 to 12, in which the generator ran. */
  public int generatorHours(int month) {
    return generatorHours[month - 1];
  }

  public int generatorHours() {
    return sum(generatorHours);
  }

  private static int sum(short[] hours) {
    int sum = 0;
    for (short of : hours) {
      sum += of;
    }
    return sum;
  }
}
