package greyspell.outcome;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * How often grey spells of each length and depth return, and the bank that would ride through.
 * Every winter gives its longest spell, its deepest spell and the least bank that would have
 * carried it: {@link RidingBank}.
 *
 * @param bank least usable bank of each winter, Wh
 * @param depth Wh that the deepest spell of each winter was short, on the bus
 * @param length days of the longest spell of each winter
 * @param byLength how often spells last at least so many days
 * @param byDepth how often spells are at least so many Wh short
 */
public record SpellClimate(
    ReturnCurve bank,
    ReturnCurve depth,
    ReturnCurve length,
    List<HowOften> byLength,
    List<HowOften> byDepth) {
  /** How often it is asked for. */
  public static final List<Integer> ONCE_IN = List.of(2, 5, 10);

  private static final int[] DAYS = {1, 2, 3, 5, 7, 10, 14, 21, 28, 42, 60, 90, 180};
  private static final double[] PARTS = {1.0, 2.0, 5.0};
  private static final int MOST_DEPTHS = 6;

  public SpellClimate {
    byLength = List.copyOf(byLength);
    byDepth = List.copyOf(byDepth);
  }

  /**
   * How often a size is reached.
   *
   * @param least days or Wh
   * @param spells of all winters together
   * @param winters in which there was at least one
   */
  public record HowOften(double least, int spells, int winters) {}

  public static SpellClimate of(WinterBook book) {
    List<WinterRecord> winters = book.winters();
    ReturnCurve depth = curve(winters, SpellClimate::deepestWh);
    return new SpellClimate(
        curve(winters, w -> w.ridingBank().leastWh()),
        depth,
        curve(winters, SpellClimate::longestDays),
        byLength(winters),
        byDepth(winters, depth.value(0)));
  }

  private static ReturnCurve curve(
      List<WinterRecord> winters, ToDoubleFunction<WinterRecord> largest) {
    return ReturnCurve.of(winters.stream().mapToDouble(largest).toArray());
  }

  private static double deepestWh(WinterRecord winter) {
    return winter.spells().isEmpty() ? 0.0 : winter.spells().get(0).shortWh();
  }

  private static double longestDays(WinterRecord winter) {
    return winter.spells().stream().mapToInt(GreySpell::days).max().orElse(0);
  }

  private static List<HowOften> byLength(List<WinterRecord> winters) {
    var rows = new ArrayList<HowOften>();
    for (int days : DAYS) {
      addNew(rows, howOften(winters, days, GreySpell::days));
    }
    return rows;
  }

  /** The deepest sizes of 1, 2 or 5 times a power of ten. */
  private static List<HowOften> byDepth(List<WinterRecord> winters, double mostWh) {
    var sizes = new ArrayList<Double>();
    for (double tenWh = 1.0; tenWh <= mostWh; tenWh *= 10.0) {
      for (double part : PARTS) {
        if (part * tenWh <= mostWh) {
          sizes.add(part * tenWh);
        }
      }
    }
    var rows = new ArrayList<HowOften>();
    for (double wh : sizes.subList(Math.max(0, sizes.size() - MOST_DEPTHS), sizes.size())) {
      addNew(rows, howOften(winters, wh, GreySpell::shortWh));
    }
    return rows;
  }

  private static void addNew(List<HowOften> rows, HowOften row) {
    if (row.spells() > 0) {
      rows.add(row);
    }
  }

  private static HowOften howOften(
      List<WinterRecord> winters, double least, ToDoubleFunction<GreySpell> size) {
    int spells = 0, in = 0;
    for (WinterRecord winter : winters) {
      int here = 0;
      for (GreySpell spell : winter.spells()) {
        here += size.applyAsDouble(spell) >= least ? 1 : 0;
      }
      spells += here;
      in += here > 0 ? 1 : 0;
    }
    return new HowOften(least, spells, in);
  }
}
