package greyspell.weather;

/** The formats that tell themselves by their first lines. */
enum WeatherFormat {
  EPW,
  TMY3,
  POWER,
  USCRN,
  SURFRAD,
  PLAIN;

  private static final String TMY3_NAMES = "Date (MM/DD/YYYY)";

  boolean isOneYearAFile() {
    return this == EPW || this == TMY3;
  }

  /**
   * What the file is, or a refusal if it is one that is known and cannot be used.
   *
   * @param head its first kilobytes
   */
  static WeatherFormat of(String head, String known, FaultList faults) {
    if (head.regionMatches(true, 0, "LOCATION", 0, 8)
        || head.regionMatches(true, 0, "\"LOCATION", 0, 9)) {
      return EPW;
    }
    int secondLine = head.indexOf('\n') + 1;
    int tmy3 = head.indexOf(TMY3_NAMES, secondLine);
    if (secondLine > 0 && tmy3 >= secondLine && tmy3 <= secondLine + 3) {
      return TMY3;
    }
    String firstLine = secondLine > 0 ? head.substring(0, secondLine - 1).strip() : head.strip();
    if (firstLine.startsWith(PowerReader.BEGIN)) {
      return POWER;
    }
    if (UscrnReader.isRow(firstLine)) {
      return USCRN;
    }
    int secondEnd = secondLine > 0 ? head.indexOf('\n', secondLine) : -1;
    if (secondEnd > 0 && SurfradReader.isPlace(head.substring(secondLine, secondEnd))) {
      return SURFRAD;
    }
    if (isFixedWidthTypicalYear(head, firstLine)) {
      throw faults.alone(
          1,
          1,
          "looks like an older fixed-width typical-year file",
          known,
          "Such files use other clocks and codes; take a newer file of the place.");
    }
    return PLAIN;
  }

  private static boolean isFixedWidthTypicalYear(String head, String firstLine) {
    if (firstLine.indexOf(',') >= 0 || firstLine.length() < 30 || head.charAt(0) != ' ') {
      return false;
    }
    for (int i = 0; i < 5; i++) {
      if (!Character.isDigit(firstLine.charAt(i))) {
        return false;
      }
    }
    return firstLine.charAt(5) == ' ';
  }
}
