package greyspell.scenario;

import greyspell.quantity.Dimension;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * One key of the scenario file: what it is called, what it holds, which values are possible, what
 * is taken when it is left out, and why. The binder, the reference page and the JSON Schema all
 * read this declaration, so that they cannot disagree.
 */
final class Key {
  /** What stands after the colon. */
  enum Kind {
    MEASURE,
    MONTHLY,
    WHOLE,
    TEXT,
    PATH,
    PATHS,
    WORD,
    FLAG,
    AZIMUTH,
    HORIZON,
    CURVE,
    HOURS,
    DAYS,
    MONTHS,
    MONTH_SPANS,
    WHEN,
    START,
    BLOCK,
    LIST
  }

  /** Whether it may be left out. */
  enum Need {
    REQUIRED,
    OPTIONAL,
    DEFAULT
  }

  final String name;
  final Kind kind;
  final String meaning;
  final List<Dimension> dimensions;
  final double low;
  final double high;
  final String mend;
  final List<String> words;
  final @Nullable Shape shape;
  final Need need;
  final String usual;
  final String why;
  final String component;
  final String sense;

  private Key(
      String name,
      Kind kind,
      String meaning,
      List<Dimension> dimensions,
      double low,
      double high,
      String mend,
      List<String> words,
      @Nullable Shape shape,
      Need need,
      String usual,
      String why,
      String component,
      String sense) {
    this.name = name;
    this.kind = kind;
    this.meaning = meaning;
    this.dimensions = dimensions;
    this.low = low;
    this.high = high;
    this.mend = mend;
    this.words = words;
    this.shape = shape;
    this.need = need;
    this.usual = usual;
    this.why = why;
    this.component = component;
    this.sense = sense;
  }

  private static Key of(
      String name,
      Kind kind,
      String meaning,
      List<Dimension> dimensions,
      List<String> words,
      @Nullable Shape shape) {
    return new Key(
        name,
        kind,
        meaning,
        dimensions,
        Double.NaN,
        Double.NaN,
        "",
        words,
        shape,
        Need.OPTIONAL,
        "",
        "",
        "",
        "");
  }

  /** A value with a unit; the first dimension is the usual one. */
  static Key measure(String name, String meaning, Dimension... dimensions) {
    return of(name, Kind.MEASURE, meaning, List.of(dimensions), List.of(), null);
  }

  /** One value, or twelve, January first. */
  static Key monthly(String name, String meaning, Dimension... dimensions) {
    return of(name, Kind.MONTHLY, meaning, List.of(dimensions), List.of(), null);
  }

  /** Points [x, y] in order of x, or a single y. */
  static Key curve(String name, String meaning, Dimension x, Dimension y) {
    return of(name, Kind.CURVE, meaning, List.of(x, y), List.of(), null);
  }

  static Key whole(String name, String meaning) {
    return of(name, Kind.WHOLE, meaning, List.of(), List.of(), null);
  }

  /** A closed choice: the enum's names in lower case. */
  static Key word(String name, String meaning, Enum<?>... choices) {
    var words = new String[choices.length];
    for (int i = 0; i < choices.length; i++) {
      words[i] = choices[i].name().toLowerCase(Locale.ROOT);
    }
    return of(name, Kind.WORD, meaning, List.of(), List.of(words), null);
  }

  static Key of(String name, Kind kind, String meaning) {
    return of(name, kind, meaning, List.of(), List.of(), null);
  }

  static Key block(String name, String meaning, Shape shape) {
    return of(name, Kind.BLOCK, meaning, List.of(), List.of(), shape);
  }

  static Key list(String name, String meaning, Shape shape) {
    return of(name, Kind.LIST, meaning, List.of(), List.of(), shape);
  }

  /** Both ends in inside units (degrees, metres, shares of 1). */
  Key within(double lowest, double highest) {
    return new Key(
        name,
        kind,
        meaning,
        dimensions,
        lowest,
        highest,
        mend,
        words,
        shape,
        need,
        usual,
        why,
        component,
        sense);
  }

  /** What the range is counted from: "from horizontal". */
  Key sense(String words) {
    return new Key(
        name,
        kind,
        meaning,
        dimensions,
        low,
        high,
        mend,
        this.words,
        shape,
        need,
        usual,
        why,
        component,
        words);
  }

  /** What to tell who writes an impossible value. */
  Key mend(String advice) {
    return new Key(
        name,
        kind,
        meaning,
        dimensions,
        low,
        high,
        advice,
        words,
        shape,
        need,
        usual,
        why,
        component,
        sense);
  }

  Key required() {
    return new Key(
        name,
        kind,
        meaning,
        dimensions,
        low,
        high,
        mend,
        words,
        shape,
        Need.REQUIRED,
        "",
        "",
        component,
        sense);
  }

  /** Taken, and listed under "What was assumed", when the key is left out. */
  Key usual(String value, String reason) {
    return new Key(
        name,
        kind,
        meaning,
        dimensions,
        low,
        high,
        mend,
        words,
        shape,
        Need.DEFAULT,
        value,
        reason,
        component,
        sense);
  }

  /** The record component that it fills. */
  Key into(String recordComponent) {
    return new Key(
        name,
        kind,
        meaning,
        dimensions,
        low,
        high,
        mend,
        words,
        shape,
        need,
        usual,
        why,
        recordComponent,
        sense);
  }

  boolean isRanged() {
    return !Double.isNaN(low);
  }

  @Override
  public String toString() {
    return name;
  }

  /** What must stand there, and what it means. */
  String expectation() {
    int end = meaning.endsWith(".") ? meaning.length() - 1 : meaning.length();
    String what =
        switch (kind) {
          case MEASURE, MONTHLY -> dimensions.get(0).words();
          case WHOLE -> "a whole number";
          case WORD -> "one of its words";
          case BLOCK ->
              shape != null && shape.isEquipment()
                  ? "a name from the library, or a block of keys"
                  : "a block of keys";
          case LIST -> "a list";
          case AZIMUTH -> "an angle or a compass word";
          default -> "a value";
        };
    return what + ": " + Character.toLowerCase(meaning.charAt(0)) + meaning.substring(1, end);
  }
}
