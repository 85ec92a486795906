package greyspell.load;

/** How well a load is known. */
public enum Evidence {
  MEASURED,
  LABEL,
  GUESS
}
