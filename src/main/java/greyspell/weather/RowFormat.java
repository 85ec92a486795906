package greyspell.weather;

import java.io.IOException;
import java.util.List;

/**
 * A format whose rows stand in real time, each the mean of an interval: first its head, then its
 * rows. Files of the same format that follow each other in time can be read as one.
 */
interface RowFormat {
  /**
   * What is known before the first row.
   *
   * @param used columns, in the order in which a row gives them
   * @param stampsAreEnds whether a row's time is the end of its interval
   * @param told the file's own words about itself; its offset is the clock the file prefers
   */
  record RowHead(
      List<WeatherColumn> used, boolean stampsAreEnds, WeatherSource told, boolean isTypicalYear) {}

  RowHead readHead() throws IOException;

  void readRows(HourGrid grid) throws IOException;

  /** What has to be told about the rows that were read. */
  List<String> notes();
}
