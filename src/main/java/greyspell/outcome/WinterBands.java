package greyspell.outcome;

import java.util.List;
import java.util.function.ToDoubleFunction;

/** The 10-50-90 % bands of many winters: what lies in the middle, and how far winters stray. */
public final class WinterBands {
  private final List<WinterRecord> winters;
  private final Band[] lowestShare = new Band[WinterRecord.DAYS];

  private WinterBands(List<WinterRecord> winters) {
    this.winters = winters;
    for (int day = 0; day < WinterRecord.DAYS; day++) {
      int of = day;
      lowestShare[day] = band(w -> w.lowestShare(of));
    }
  }

  public static WinterBands of(WinterBook book) {
    return new WinterBands(book.winters());
  }

  /** Of the whole winters, in Wh. */
  public Band wh(WinterSum sum) {
    return band(w -> w.wh(sum));
  }

  /** Of one month, 1 to 12, in Wh. */
  public Band wh(WinterSum sum, int month) {
    return band(w -> w.months().wh(sum, month));
  }

  /** Hours a winter in which something asked for was not served. */
  public Band unmetHours() {
    return band(WinterRecord::unmetHours);
  }

  public Band unmetHours(int month) {
    return band(w -> w.months().unmetHours(month));
  }

  public Band unmetDays() {
    return band(w -> w.months().unmetDays());
  }

  public Band generatorHours() {
    return band(w -> w.months().generatorHours());
  }

  /** Hours of the longest shortfall of a winter, 0 in one without. */
  public Band longestShortfallHours() {
    return band(w -> w.longestShortfall().hours());
  }

  /** Of the lowest charge of a winter over the usable bank. */
  public Band lowestShare() {
    return band(WinterRecord::lowestShareOfAll);
  }

  /** Of the lowest charge of a day of the year, from 0, over the usable bank. */
  public Band lowestShare(int dayOfYear) {
    return lowestShare[dayOfYear];
  }

  private Band band(ToDoubleFunction<WinterRecord> of) {
    return Band.of(winters.stream().mapToDouble(of).toArray());
  }
}
