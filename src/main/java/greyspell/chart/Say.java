package greyspell.chart;

import greyspell.calendar.HourCalendar;
import java.util.List;
import java.util.Locale;

/** Numbers and dates as people read them: kWh, %, days, "3 December 2022". */
public final class Say {
  private static final String[] MONTHS = {
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
    "December"
  };
  private static final double WH_PER_KWH = 1000.0;

  private Say() {}

  /** A plain decimal number with a comma every three digits; "-0" never appears. */
  public static String number(double value, int decimals) {
    if (!Double.isFinite(value)) {
      return "unknown";
    }
    long scale = Math.round(Math.pow(10.0, decimals));
    long scaled = Math.round(Math.abs(value) * scale);
    var text = new StringBuilder();
    String whole = Long.toString(scaled / scale);
    for (int i = 0; i < whole.length(); i++) {
      text.append(whole.charAt(i));
      int left = whole.length() - 1 - i;
      if (left > 0 && left % 3 == 0) {
        text.append(',');
      }
    }
    if (decimals > 0) {
      String part = Long.toString(scaled % scale + scale).substring(1);
      text.append('.').append(part);
    }
    return value < 0.0 && scaled != 0 ? "-" + text : text.toString();
  }

  /** Energy for people: two or three figures are enough. */
  public static String kwh(double wh) {
    return kwhNumber(wh) + " kWh";
  }

  /** As {@link #kwh} without the unit. */
  public static String kwhNumber(double wh) {
    double kwh = wh / WH_PER_KWH;
    double size = Math.abs(kwh);
    if (size > 0.0 && size < 0.05) {
      return wh < 0.0 ? "-" + number(size, 3) : number(size, 3);
    }
    return number(kwh, size == 0.0 || size >= 19.95 ? 0 : 1);
  }

  /** Energy in a table: always one decimal, so that columns line up. */
  public static String kwhCell(double wh) {
    return number(wh / WH_PER_KWH, 1);
  }

  public static String kw(double w) {
    return number(w / WH_PER_KWH, 1) + " kW";
  }

  public static String percent(double share) {
    double percent = share * 100.0;
    double size = Math.abs(percent);
    if (size > 0.0 && size < 0.05) {
      return "under 0.1 %";
    }
    return number(percent, size == 0.0 || size >= 9.95 ? 0 : 1) + " %";
  }

  public static String count(int n, String one, String many) {
    return number(n, 0) + " " + (n == 1 ? one : many);
  }

  public static String hours(int n) {
    return count(n, "hour", "hours");
  }

  public static String days(double d) {
    return number(d, d >= 9.95 ? 0 : 1) + (d == 1.0 ? " day" : " days");
  }

  /** "a, b and c". */
  public static String list(List<String> parts) {
    int last = parts.size() - 1;
    return last < 1
        ? String.join("", parts)
        : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
  }

  /** 1 to 12. */
  public static String month(int month) {
    return MONTHS[month - 1];
  }

  public static String shortMonth(int month) {
    return MONTHS[month - 1].substring(0, 3);
  }

  /** "3 December", and with the year unless it is a typical year or one winter by itself. */
  public static String date(HourCalendar calendar, int hour) {
    return dayMonth(calendar, hour) + yearOf(calendar, hour);
  }

  /** "3 December". */
  public static String dayMonth(HourCalendar calendar, int hour) {
    return calendar.dayOfMonth(hour) + " " + month(calendar.month(hour));
  }

  /** "3 Dec". */
  public static String shortDate(HourCalendar calendar, int hour) {
    return calendar.dayOfMonth(hour) + " " + shortMonth(calendar.month(hour));
  }

  /** "3 Dec 2022", without the year in a typical year. */
  public static String shortDateYear(HourCalendar calendar, int hour) {
    return shortDate(calendar, hour) + yearOf(calendar, hour);
  }

  private static String yearOf(HourCalendar calendar, int hour) {
    return calendar.isTypical() || calendar.isOneWinter() ? "" : " " + calendar.year(hour);
  }

  /** "self_discharge_wh" as "self discharge". */
  public static String name(String key) {
    String plain = key.endsWith("_wh") ? key.substring(0, key.length() - 3) : key;
    return switch (plain) {
      case "temperature_and_low_light_delta" -> "heat and weak light, net of what cold gives";
      case "array_wiring" -> "wires from the panels";
      case "outside_window" -> "voltage outside the tracking window";
      case "held_at_bank_voltage" -> "panels held at the bank's voltage, without tracking";
      case "controller" -> "heat in the controller";
      case "generator_charger" -> "heat in the generator's charger";
      case "controller_wiring" -> "wires from controller to bank";
      case "inverter" -> "heat in the inverter";
      case "inverter_wiring" -> "wires from bank to inverter";
      case "standing_inverter" -> "inverter, standing by";
      case "standing_controller" -> "controller, standing by";
      case "standing_bank" -> "the bank's own electronics";
      case "standing_bank_heater" -> "the bank's heater";
      default -> plain.replace('_', ' ').toLowerCase(Locale.ROOT);
    };
  }
}
