package greyspell.weather.ensemble;

/** How winters come about. */
public enum WinterKind {
  /** As they were, one by one. */
  MEASURED,
  /** Stretches of measured years in new order. */
  SPLICED,
  /** From monthly means. */
  MADE
}
