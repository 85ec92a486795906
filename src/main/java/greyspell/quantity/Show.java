package greyspell.quantity;

import java.time.LocalDate;
import java.util.List;

/**
 * Numbers as people read them: energy in kWh, power in W or kW, sensible digits, always a decimal
 * point, no grouping of thousands. What is not known reads "not known".
 */
public final class Show {
  private static final List<String> MONTHS =
      List.of(
          "January",
          "February",
          "March",
          "April",
          "May",
          "June",
          "July",
          "August",
          "September",
          "October",
          "November",
          "December");
  private static final long[] TENS = {1, 10, 100, 1000, 10_000, 100_000, 1_000_000};
  private static final double LARGEST_PLAIN = 1e12;
  private static final double WH_PER_KWH = 1000.0;
  private static final double W_PER_KW = 1000.0;

  private Show() {}

  /** Fixed decimals, 0 to 6, halves away from zero: {@code number(-0.04, 1)} is "0.0". */
  public static String number(double value, int decimals) {
    if (Double.isNaN(value)) {
      return "not known";
    }
    if (Double.isInfinite(value)) {
      return value > 0 ? "unlimited" : "-unlimited";
    }
    if (Math.abs(value) >= LARGEST_PLAIN) {
      return Double.toString(value);
    }
    long scaled = Math.round(Math.abs(value) * TENS[decimals]);
    var out = new StringBuilder(16);
    if (value < 0 && scaled != 0) {
      out.append('-');
    }
    out.append(scaled / TENS[decimals]);
    if (decimals > 0) {
      String rest = Long.toString(scaled % TENS[decimals]);
      out.append('.');
      for (int i = rest.length(); i < decimals; i++) {
        out.append('0');
      }
      out.append(rest);
    }
    return out.toString();
  }

  /** About three digits: 0.056, 0.56, 5.61, 56.1, 561. */
  public static String number(double value) {
    double size = Math.abs(value);
    if (size >= 99.95) {
      return number(value, 0);
    }
    if (size >= 9.995) {
      return number(value, 1);
    }
    return number(value, size >= 0.0995 || size == 0.0 ? 2 : 3);
  }

  /** Like {@link #number(double, int)} without zeros at the end: 51.20 is "51.2", 4.0 is "4". */
  public static String trimmed(double value, int decimals) {
    String text = number(value, decimals);
    if (text.indexOf('.') < 0 || text.indexOf('E') >= 0) {
      return text;
    }
    int end = text.length();
    while (text.charAt(end - 1) == '0') {
      end--;
    }
    if (text.charAt(end - 1) == '.') {
      end--;
    }
    return text.substring(0, end);
  }

  /** "0.85 kWh", "12.3 kWh", "2140 kWh". */
  public static String energy(double energyWh) {
    return number(energyWh / WH_PER_KWH).concat(" kWh");
  }

  /** "142 W", "6.20 kW". */
  public static String power(double powerW) {
    double size = Math.abs(powerW);
    if (size >= 999.5) {
      return number(powerW / W_PER_KW).concat(" kW");
    }
    return (size >= 9.95 || size == 0.0 ? number(powerW, 0) : trimmed(powerW, 1)).concat(" W");
  }

  /** A share of 1 as "0.03 %", "4.2 %", "38 %". */
  public static String percent(double share) {
    double percent = 100.0 * share;
    double size = Math.abs(percent);
    if (size >= 9.95 || size == 0.0) {
      return number(percent, 0).concat(" %");
    }
    return number(percent, size >= 0.095 ? 1 : 2).concat(" %");
  }

  /** "-16 °C", "3.4 °C". */
  public static String temperature(double temperatureC) {
    return trimmed(temperatureC, 1).concat(" °C");
  }

  public static String voltage(double voltageV) {
    return trimmed(voltageV, 1).concat(" V");
  }

  public static String current(double currentA) {
    return trimmed(currentA, 1).concat(" A");
  }

  public static String angle(double angleDeg) {
    return trimmed(angleDeg, 1).concat("°");
  }

  /** "1 day", "2.4 days", "12 days". */
  public static String days(double daysD) {
    String number = Math.abs(daysD) >= 9.95 ? number(daysD, 0) : trimmed(daysD, 1);
    return number.concat(number.equals("1") ? " day" : " days");
  }

  /** "1 hour", "37 hours". */
  public static String hours(double hoursH) {
    String number = Math.abs(hoursH) >= 9.95 ? number(hoursH, 0) : trimmed(hoursH, 1);
    return number.concat(number.equals("1") ? " hour" : " hours");
  }

  /** "28 November 2017". */
  public static String date(LocalDate date) {
    return day(date).concat(" ").concat(Integer.toString(date.getYear()));
  }

  /** "28 November". */
  public static String day(LocalDate date) {
    return Integer.toString(date.getDayOfMonth()).concat(" ").concat(month(date.getMonthValue()));
  }

  /** "November", for 1 to 12. */
  public static String month(int month) {
    return MONTHS.get(month - 1);
  }

  /** "Nov", for 1 to 12. */
  public static String shortMonth(int month) {
    return MONTHS.get(month - 1).substring(0, 3);
  }

  /** "EUR 1,200"; the currency is the user's own word. */
  public static String money(String currency, double amountCost) {
    String number = grouped(number(amountCost, Math.abs(amountCost) < 99.5 ? 2 : 0));
    return currency.isEmpty() ? number : currency.concat(" ").concat(number);
  }

  /** With a comma every three digits before the point. */
  private static String grouped(String number) {
    var out = new StringBuilder(number);
    int end = number.indexOf('.') < 0 ? number.length() : number.indexOf('.');
    int first = number.startsWith("-") ? 1 : 0;
    for (int at = end - 3; at > first && number.indexOf('E') < 0; at -= 3) {
      out.insert(at, ',');
    }
    return out.toString();
  }
}
