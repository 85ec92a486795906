package greyspell.words;

/** Which units people are shown; inside, everything stays SI. */
public enum Units {
  METRIC,
  /** Degrees Fahrenheit, feet, inches, US gallons; energy stays in kWh. */
  US
}
