package greyspell.load;

/** How days outside a log are made from it. */
public enum LogExtension {
  NEAREST_DAY,
  FIT
}
