package greyspell.weather.ensemble;

import java.util.List;

/**
 * Winters, one year of weather each, as many as are asked for. Year {@code i} is the same whatever
 * was asked before and on whatever thread; sources hold no state that a fill changes.
 */
public interface WinterSource {
  /** As many years as an {@code int} can count. */
  int UNBOUNDED = Integer.MAX_VALUE;

  /** How many different years there are. */
  int years();

  /**
   * Overwrites a year; nothing is kept of what it held.
   *
   * @param year 0 to {@link #years} less 1
   */
  void fill(int year, WeatherYear reused);

  /** Of one year: "2017/18" of a measured winter, "winter 18" of a made one. */
  String name(int year);

  ClimateSite site();

  /** Where the years come from, in a few words: "made from monthly means, seed 7". */
  String describe();

  /** What kind of weather it is, where a file's format is told: "measured winters". */
  default String format() {
    return "made weather";
  }

  /** What was assumed and what the reader must know, one sentence each. */
  List<String> notes();
}
