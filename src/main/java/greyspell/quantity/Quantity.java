package greyspell.quantity;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A value with its unit, as a person wrote it: {@code 410 W}, {@code -0.29 %/K}, {@code 40 ft}. It
 * keeps the unit it was written in, so that an answer can be given in the same one.
 */
public final class Quantity {
  private static final int LONGEST = 60;

  private final double inside;
  private final Unit unit;

  private Quantity(double inside, Unit unit) {
    this.inside = inside;
    this.unit = unit;
  }

  /** Text that is no such quantity: what would have been right, and one way to mend it. */
  public static final class NotUnderstood extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final String expected;
    private final String mend;

    NotUnderstood(String expected, String mend) {
      super(expected + "; " + mend, null, false, false);
      this.expected = expected;
      this.mend = mend;
    }

    public String expected() {
      return expected;
    }

    public String mend() {
      return mend;
    }
  }

  /** In the inside unit of its dimension: W, Wh, V, A, °C, K, deg, m, a share of 1, h. */
  public double inside() {
    return inside;
  }

  public Unit unit() {
    return unit;
  }

  public Dimension dimension() {
    return unit.dimension();
  }

  /** Reads a value of this dimension. */
  public static Quantity parse(String text, Dimension wanted) {
    return parse(text, List.of(wanted));
  }

  /**
   * Reads a value of any of these dimensions; the first one is named in messages. A bare number is
   * taken only if {@link Dimension#NUMBER} is among them.
   */
  public static Quantity parse(String text, List<Dimension> wanted) {
    String clean = clean(text);
    int end = numberEnd(clean);
    if (end == 0 || clean.length() > LONGEST) {
      throw notANumber(clean, wanted);
    }
    String number = clean.substring(0, end);
    String unitText = clean.substring(end).strip();
    if (number.indexOf(',') >= 0) {
      refuseThousands(number, unitText, wanted);
      number = number.replace(',', '.');
    }
    if (!unitText.isEmpty() && isDigitOrPoint(unitText.charAt(0))) {
      throw new NotUnderstood(
          "one number without gaps, then the unit: " + example(wanted),
          "Write the digits together: \"" + clean.replaceAll("(?<=\\d)[ _](?=\\d)", "") + "\".");
    }
    Unit unit = unit(unitText, number, wanted);
    double inside = unit.inside(new BigDecimal(number));
    if (!(Math.abs(inside) <= Double.MAX_VALUE)) {
      throw notFinite(wanted);
    }
    return new Quantity(inside, unit);
  }

  /** All digits, in the unit of this dimension that people use; reads back as the same number. */
  public static String print(double inside, Dimension dimension) {
    Check.finite("value", inside);
    return peoplesUnit(inside, dimension).exactText(inside);
  }

  private static Unit peoplesUnit(double inside, Dimension dimension) {
    double size = Math.abs(inside);
    return switch (dimension) {
      case POWER -> size >= 10_000.0 ? Unit.KILOWATT : Unit.WATT;
      case ENERGY -> size >= 1000.0 ? Unit.KILOWATT_HOUR : Unit.WATT_HOUR;
      case SHARE -> Unit.PERCENT;
      case SHARE_PER_MONTH -> Unit.PERCENT_A_MONTH;
      case SHARE_PER_KELVIN -> Unit.PERCENT_PER_KELVIN;
      case RESISTANCE -> size < 1.0 ? Unit.MILLIOHM : Unit.OHM;
      default -> dimension.insideUnit();
    };
  }

  /** In the unit it was written in. */
  @Override
  public String toString() {
    return unit.text(inside, 15);
  }

  // ---- reading --------------------------------------------------------------------------------

  /** Signs and blanks of typesetting become plain ones. */
  private static String clean(String text) {
    return text.replace('\u2212', '-')
        .replace('\u00a0', ' ')
        .replace('\u202f', ' ')
        .replace('\u2009', ' ')
        .strip();
  }

  /** Where the number ends; 0 if there is none. */
  private static int numberEnd(String text) {
    int i = 0;
    int length = text.length();
    if (i < length && (text.charAt(i) == '-' || text.charAt(i) == '+')) {
      i++;
    }
    int digits = 0;
    boolean pointSeen = false;
    for (; i < length; i++) {
      char c = text.charAt(i);
      if (c >= '0' && c <= '9') {
        digits++;
      } else if ((c == '.' || c == ',') && !pointSeen) {
        pointSeen = true;
      } else {
        break;
      }
    }
    if (digits == 0) {
      return 0;
    }
    return exponentEnd(text, i);
  }

  private static int exponentEnd(String text, int from) {
    int i = from;
    if (i < text.length() && (text.charAt(i) == 'e' || text.charAt(i) == 'E')) {
      i++;
      if (i < text.length() && (text.charAt(i) == '-' || text.charAt(i) == '+')) {
        i++;
      }
      int first = i;
      while (i < text.length() && text.charAt(i) >= '0' && text.charAt(i) <= '9') {
        i++;
      }
      if (i > first && i - first <= 4) {
        return i;
      }
    }
    return from;
  }

  private static boolean isDigitOrPoint(char c) {
    return (c >= '0' && c <= '9') || c == ',' || c == '.' || c == '_';
  }

  /** One to three digits, a comma, three digits: a thousand or a fraction? */
  private static void refuseThousands(String number, String unitText, List<Dimension> wanted) {
    int comma = number.indexOf(',');
    String whole = number.substring(0, comma).replace("-", "").replace("+", "");
    String rest = number.substring(comma + 1);
    if (rest.length() == 3 && !whole.isEmpty() && whole.length() <= 3 && !whole.startsWith("0")) {
      String unit = unitText.isEmpty() ? "" : " " + unitText;
      throw new NotUnderstood(
          example(wanted) + ": the comma may part thousands or a fraction",
          "Write \""
              + number.replace(",", "")
              + unit
              + "\" or \""
              + number.replace(',', '.')
              + unit
              + "\", whichever is meant.");
    }
  }

  private static Unit unit(String unitText, String number, List<Dimension> wanted) {
    for (Dimension dimension : wanted) {
      Unit unit = findUnit(unitText, dimension);
      if (unit != null) {
        return unit;
      }
    }
    if (unitText.isEmpty()) {
      throw bare(number, wanted);
    }
    for (Dimension other : Dimension.values()) {
      Unit unit = findUnit(unitText, other);
      if (unit != null) {
        throw wrongDimension(number, unit, wanted);
      }
    }
    throw unknownUnit(number, unitText, wanted);
  }

  private static @Nullable Unit findUnit(String text, Dimension dimension) {
    Unit loose = null;
    for (Unit unit : Unit.values()) {
      if (unit.dimension() != dimension) {
        continue;
      }
      List<String> spellings = unit.spellings();
      for (int i = 0; i < spellings.size(); i++) {
        String spelling = spellings.get(i);
        if (spelling.equals(text)) {
          return unit;
        }
        if (spelling.equalsIgnoreCase(text) && !milliOrMega(spelling, text)) {
          loose = unit;
        }
      }
    }
    return loose;
  }

  /** "KWH" is kWh, but "MΩ" is not mΩ. */
  private static boolean milliOrMega(String spelling, String text) {
    char first = spelling.charAt(0);
    return (first == 'm' || first == 'M') && first != text.charAt(0);
  }

  // ---- messages -------------------------------------------------------------------------------

  private static String example(List<Dimension> wanted) {
    return wanted.get(0).words() + " such as " + wanted.get(0).example();
  }

  /** "W, kW, hp or Btu/h". */
  private static String unitsOf(List<Dimension> wanted) {
    var symbols = new ArrayList<String>();
    for (Dimension dimension : wanted) {
      for (Unit unit : Unit.values()) {
        if (unit.dimension() == dimension
            && unit != Unit.WHOLE
            && unit != Unit.SHARE_A_MONTH
            && unit != Unit.ONE_PER_KELVIN
            && unit != Unit.ONE) {
          symbols.add(unit.symbol());
        }
      }
    }
    if (symbols.size() == 1) {
      return symbols.get(0);
    }
    if (symbols.isEmpty()) {
      return "no unit";
    }
    String last = symbols.remove(symbols.size() - 1);
    return String.join(", ", symbols) + " or " + last;
  }

  private static NotUnderstood notANumber(String text, List<Dimension> wanted) {
    String word = text.toLowerCase(java.util.Locale.ROOT).replace(".", "").replace("-", "");
    if (word.startsWith("nan") || word.startsWith("inf") || word.startsWith("∞")) {
      return notFinite(wanted);
    }
    return new NotUnderstood(
        "must be " + example(wanted), "Write a number and a unit: " + unitsOf(wanted) + ".");
  }

  private static NotUnderstood notFinite(List<Dimension> wanted) {
    return new NotUnderstood(
        "must be a finite number: " + example(wanted),
        "Leave the key out if the value is not known.");
  }

  private static NotUnderstood bare(String number, List<Dimension> wanted) {
    Dimension first = wanted.get(0);
    String mend;
    if (first == Dimension.SHARE) {
      double value = new BigDecimal(number).doubleValue();
      mend =
          Math.abs(value) <= 1.0
              ? "Write \"" + print(value, first) + "\" if " + number + " of the whole is meant."
              : "Write \"" + number + " %\".";
    } else {
      mend = "Write \"" + number + " " + preferredSymbol(first) + "\" if that is meant.";
    }
    return new NotUnderstood(
        "must be " + first.words() + " with its unit: " + unitsOf(wanted), mend);
  }

  private static String preferredSymbol(Dimension dimension) {
    return switch (dimension) {
      case SHARE, SHARE_PER_KELVIN, SHARE_PER_MONTH -> peoplesUnit(1.0, dimension).symbol();
      default -> dimension.insideUnit().symbol();
    };
  }

  private static NotUnderstood wrongDimension(String number, Unit unit, List<Dimension> wanted) {
    Dimension first = wanted.get(0);
    Dimension read = unit.dimension();
    String expected = "must be " + example(wanted);
    if (read == Dimension.ENERGY && first == Dimension.POWER) {
      return new NotUnderstood(
          expected,
          unit.symbol()
              + " is energy (how much in all), W and kW are power (how fast): a 2 kW kettle that"
              + " runs for half an hour takes 1 kWh. Write \""
              + number
              + " "
              + (unit == Unit.WATT_HOUR ? "W" : "kW")
              + "\" if power is meant.");
    }
    if (read == Dimension.POWER && wanted.contains(Dimension.ENERGY)) {
      return new NotUnderstood(
          expected,
          unit.symbol()
              + " is power (how fast), Wh and kWh are energy (how much in all): a 2 kW kettle that"
              + " runs for half an hour takes 1 kWh. Write \""
              + number
              + " "
              + (unit == Unit.WATT ? "Wh" : "kWh")
              + "\" if energy is meant.");
    }
    if (read == Dimension.CHARGE && wanted.contains(Dimension.CURRENT)) {
      return new NotUnderstood(
          expected,
          "Ah is charge (how much in all), A is current (how fast): read the label anew.");
    }
    if (read == Dimension.CURRENT && wanted.contains(Dimension.CHARGE)) {
      return new NotUnderstood(
          expected,
          "A is current (how fast), Ah is charge (how much in all): read the label anew.");
    }
    return new NotUnderstood(
        expected,
        "\""
            + unit.symbol()
            + "\" is a unit of "
            + noun(read)
            + "; write "
            + unitsOf(wanted)
            + ".");
  }

  private static String noun(Dimension dimension) {
    String words = dimension.words();
    return words.substring(words.indexOf(' ') + 1);
  }

  private static NotUnderstood unknownUnit(String number, String unitText, List<Dimension> wanted) {
    if (wanted.get(0) == Dimension.ANGLE && unitText.length() == 1 && "NSEW".contains(unitText)) {
      return new NotUnderstood(
          "must be degrees, north and east positive, such as 53.1 or -1.9",
          "Write south and west with a minus sign.");
    }
    var known = new ArrayList<String>();
    for (Unit unit : Unit.values()) {
      if (wanted.contains(unit.dimension()) && !unit.symbol().isEmpty()) {
        known.addAll(unit.spellings());
      }
    }
    if (known.isEmpty()) {
      return new NotUnderstood(
          "must be a plain number without a unit", "Write \"" + number + "\".");
    }
    String nearest = Nearest.of(unitText, known);
    return new NotUnderstood(
        "must be " + wanted.get(0).words() + " in " + unitsOf(wanted),
        nearest == null
            ? "No unit is spelled \"" + unitText + "\" here."
            : "No unit is spelled \""
                + unitText
                + "\"; nearest: \""
                + number
                + " "
                + nearest
                + "\".");
  }
}
