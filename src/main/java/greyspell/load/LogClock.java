package greyspell.load;

/** Which clock wrote the times of a log. */
public enum LogClock {
  STANDARD,
  LOCAL
}
