package greyspell.outcome;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

/**
 * The books of one winter by month, January first. The twelve months are those of the winter: in
 * the north January to June follow July to December.
 */
public final class WinterMonths {
  public static final int MONTHS = 12;

  private final Map<WinterSum, double[]> wh = new EnumMap<>(WinterSum.class);
  final short[] unmetHours = new short[MONTHS];
  final byte[] unmetDays = new byte[MONTHS];
  final short[] generatorHours = new short[MONTHS];

  WinterMonths() {
    for (WinterSum sum : WinterSum.values()) {
      wh.put(sum, new double[MONTHS]);
    }
  }

  void put(WinterSum sum, int month, double monthWh) {
    of(sum)[month - 1] = monthWh;
  }

  private double[] of(WinterSum sum) {
    return Objects.requireNonNull(wh.get(sum));
  }

  /** Of a month, 1 to 12. */
  public double wh(WinterSum sum, int month) {
    return of(sum)[month - 1];
  }

  /** Of the whole winter. */
  public double wh(WinterSum sum) {
    double totalWh = 0.0;
    for (double monthWh : of(sum)) {
      totalWh += monthWh;
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
