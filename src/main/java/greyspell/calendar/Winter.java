package greyspell.calendar;

/**
 * One winter with the half years around it.
 *
 * @param name "2017/18" in the north, "2018" in the south, "typical year"
 * @param fromHour first hour
 * @param toHour one past the last hour
 * @param isWhole false for the half winters at the ends of a series, which are not counted
 */
public record Winter(String name, int fromHour, int toHour, boolean isWhole) {
  static String northernName(int autumnYear) {
    int next = (autumnYear + 1) % 100;
    return autumnYear + "/" + (next < 10 ? "0" : "") + next;
  }
}
