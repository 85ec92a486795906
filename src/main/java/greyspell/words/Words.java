package greyspell.words;

import greyspell.cause.Said;
import greyspell.cause.SaidValue;
import greyspell.quantity.Show;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * One language with its units: says sentences by key and writes numbers as its readers do. The
 * patterns stand in {@code words_xx.properties} (sentences of the causes, numbers, dates) and
 * {@code page_xx.properties} (the pages), UTF-8; WordsTest holds that all languages have the same
 * keys.
 */
public final class Words {
  /** Languages that are complete. */
  public static final List<String> LANGUAGES = List.of("en", "de");

  private static final List<String> FILES = List.of("words", "page");
  private static final double LITRES_PER_GALLON = 3.785411784;
  private static final double FEET_PER_METRE = 1.0 / 0.3048;
  private static final double METRES_PER_MILE = 1609.344;
  private static final double INCHES_PER_METRE = 1.0 / 0.0254;

  private final String language;
  private final Units units;
  private final Properties patterns = new Properties();
  private final ReadyWords readyWords;

  private Words(String language, Units units) {
    this.language = language;
    this.units = units;
    readyWords = ReadyWords.of(language);
    for (String file : FILES) {
      load(file + "_" + language + ".properties");
    }
  }

  /**
   * Reads the files of a language.
   *
   * @throws IllegalArgumentException for a language that is not among {@link #LANGUAGES}
   */
  public static Words of(String language, Units units) {
    if (!LANGUAGES.contains(language)) {
      throw new IllegalArgumentException("no words in " + language);
    }
    return new Words(language, units);
  }

  private void load(String name) {
    try (var in = Words.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException(name + " is not in the program");
      }
      patterns.load(new InputStreamReader(in, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** As HTML tells it: "en". */
  public String language() {
    return language;
  }

  public Units units() {
    return units;
  }

  public Set<String> keys() {
    return new TreeSet<>(patterns.stringPropertyNames());
  }

  public boolean has(String key) {
    return patterns.containsKey(key);
  }

  /** A pattern as it stands in its file. */
  public String pattern(String key) {
    String pattern = patterns.getProperty(key);
    if (pattern == null) {
      throw new IllegalArgumentException("no words for " + key + " in " + language);
    }
    return pattern;
  }

  // ---- sentences

  public String say(Said said) {
    var shown = new ArrayList<String>();
    for (SaidValue value : said.values()) {
      shown.add(show(value));
    }
    return Pattern.fill(pattern(said.key()), shown);
  }

  /** With values that are written already. */
  public String say(String key, String... shown) {
    return Pattern.fill(pattern(key), List.of(shown));
  }

  /** "a", "a and b", "a, b and c". */
  public String list(List<String> parts) {
    if (parts.size() < 2) {
      return parts.isEmpty() ? "" : parts.get(0);
    }
    int last = parts.size() - 1;
    return String.join(", ", parts.subList(0, last))
        + " "
        + say("list.and")
        + " "
        + parts.get(last);
  }

  public String show(SaidValue value) {
    if (value instanceof SaidValue.Energy v) {
      return energy(v.wh());
    }
    if (value instanceof SaidValue.Power v) {
      return power(v.powerW());
    }
    if (value instanceof SaidValue.Percent v) {
      return percent(v.ofWholeShare());
    }
    if (value instanceof SaidValue.Count v) {
      return number(v.number(), 0);
    }
    if (value instanceof SaidValue.Hours v) {
      return hours(v.lengthH());
    }
    if (value instanceof SaidValue.Days v) {
      return days(v.lengthD());
    }
    if (value instanceof SaidValue.Day v) {
      return v.isYearShown() ? date(v.date()) : day(v.date());
    }
    if (value instanceof SaidValue.Clock v) {
      return clock(v.hourOfDay());
    }
    if (value instanceof SaidValue.Angle v) {
      return local(Show.trimmed(v.angleDeg(), 1)) + "°";
    }
    if (value instanceof SaidValue.Litres v) {
      return fuel(v.fuelL());
    }
    if (value instanceof SaidValue.Temperature v) {
      return temperature(v.temperatureC());
    }
    if (value instanceof SaidValue.Amounts v) {
      // the names have commas of their own
      return String.join(
          "; ", v.amounts().stream().map(a -> name(a.name()) + " " + energy(a.wh())).toList());
    }
    if (value instanceof SaidValue.Word v) {
      return pattern(v.key());
    }
    if (value instanceof SaidValue.Name v) {
      return name(v.name());
    }
    if (value instanceof SaidValue.Phrase v) {
      String own = translated(v.english());
      return own == null ? v.english() : own;
    }
    return value.shown();
  }

  /** A name of the user's, which stays; the program's own word where the user gave none. */
  public String name(String name) {
    return readyWords.name(name);
  }

  /** A text that was written out in metric units with a decimal point, as this edition tells it. */
  public String ready(String text) {
    return ReadyText.in(this, text);
  }

  /**
   * An English sentence of another room in this language, with its numbers; null where the language
   * has none for it.
   */
  public @Nullable String translated(String english) {
    String own = language.equals("en") ? english : readyWords.in(english);
    return own == null ? null : ready(own);
  }

  // ---- numbers

  /** Fixed decimals, thousands set apart. */
  public String number(double value, int decimals) {
    return local(Show.number(value, decimals));
  }

  /** About three digits. */
  public String number(double value) {
    return local(Show.number(value));
  }

  /** A number as {@link Show} writes it, in this language. */
  public String local(String plain) {
    int point = plain.indexOf('.');
    int end = point < 0 ? plain.length() : point;
    var out = new StringBuilder(plain.length() + 4);
    for (int i = 0; i < end; i++) {
      char c = plain.charAt(i);
      out.append(c);
      int left = end - 1 - i;
      if (left > 0 && left % 3 == 0 && Character.isDigit(c) && allDigits(plain, i + 1, end)) {
        out.append(pattern("number.group"));
      }
    }
    return point < 0
        ? out.toString()
        : out.append(pattern("number.decimal")).append(plain, point + 1, plain.length()).toString();
  }

  private static boolean allDigits(String text, int from, int to) {
    for (int i = from; i < to; i++) {
      if (!Character.isDigit(text.charAt(i))) {
        return false;
      }
    }
    return true;
  }

  /** "12.3 kWh". */
  public String energy(double wh) {
    return kwh(wh) + " kWh";
  }

  /** The same without the unit. */
  public String kwh(double wh) {
    return number(wh / 1000.0);
  }

  /** "142 W", "6.2 kW". */
  public String power(double powerW) {
    return quantity(Show.power(powerW));
  }

  public String percent(double share) {
    return quantity(Show.percent(share));
  }

  public String voltage(double voltageV) {
    return quantity(Show.voltage(voltageV));
  }

  public String current(double currentA) {
    return quantity(Show.current(currentA));
  }

  private String quantity(String shown) {
    int space = shown.indexOf(' ');
    return space < 0 ? local(shown) : local(shown.substring(0, space)) + shown.substring(space);
  }

  /** "1 hour", "37 hours". */
  public String hours(double lengthH) {
    return counted("time.hours", Show.hours(lengthH));
  }

  /** "1 day", "2.4 days". */
  public String days(double lengthD) {
    return counted("time.days", Show.days(lengthD));
  }

  private String counted(String key, String shown) {
    return say(key, local(shown.substring(0, shown.indexOf(' '))));
  }

  /** "-16 °C" or "3 °F". */
  public String temperature(double temperatureC) {
    return units == Units.US
        ? number(temperatureC * 1.8 + 32.0, 0) + " °F"
        : local(Show.trimmed(temperatureC, 1)) + " °C";
  }

  /** "-16.0 °C" or "3 °F": all with as many decimals, for a column. */
  public String evenTemperature(double temperatureC) {
    return units == Units.US ? temperature(temperatureC) : number(temperatureC, 1) + " °C";
  }

  /** Fuel: "23 litres" or "6.1 gallons". */
  public String fuel(double fuelL) {
    boolean isUs = units == Units.US;
    return say(
        isUs ? "unit.gallons" : "unit.litres", number(isUs ? fuelL / LITRES_PER_GALLON : fuelL));
  }

  /** "60 m" or "197 ft"; "1.5 m" or "4.9 ft". */
  public String length(double lengthM) {
    return units == Units.US
        ? number(lengthM * FEET_PER_METRE, Math.abs(lengthM) < 3.0 ? 1 : 0) + " ft"
        : local(Show.trimmed(lengthM, 1)) + " m";
  }

  /** "12 km" or "7.5 miles". */
  String distance(double lengthM) {
    return units == Units.US
        ? local(Show.trimmed(lengthM / METRES_PER_MILE, 1)) + " miles"
        : local(Show.trimmed(lengthM / 1000.0, 1)) + " km";
  }

  /** "12 mm" or "0.47 in". */
  public String smallLength(double lengthM) {
    return units == Units.US
        ? number(lengthM * INCHES_PER_METRE) + " in"
        : local(Show.trimmed(lengthM * 1000.0, 1)) + " mm";
  }

  // ---- dates

  /** "28 November 2017". */
  public String date(LocalDate date) {
    return say("date.full", day(date), Integer.toString(date.getYear()));
  }

  /** "28 November". */
  public String day(LocalDate date) {
    return say("date.day", Integer.toString(date.getDayOfMonth()), month(date.getMonthValue()));
  }

  /** "28 Nov". */
  public String shortDay(LocalDate date) {
    return say(
        "date.day", Integer.toString(date.getDayOfMonth()), shortMonth(date.getMonthValue()));
  }

  /** "November", for 1 to 12. */
  public String month(int month) {
    return pattern("month." + month);
  }

  public String shortMonth(int month) {
    return pattern("month.short." + month);
  }

  /** "17:00". */
  public String clock(int hourOfDay) {
    return say("time.clock", (hourOfDay < 10 ? "0" : "") + hourOfDay);
  }
}
