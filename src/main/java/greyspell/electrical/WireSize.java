package greyspell.electrical;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Wire sizes whose resistance is in a table: AWG 14 to 4/0, and 1.5 to 120 mm². Copper, as printed.
 *
 * <p>Sources: NEC chapter 9, Table 8, stranded uncoated copper at 75 °C, ohm per 1000 ft (from
 * memory); IEC 60228, class 2 and class 5, most ohm per km at 20 °C (seen second-hand).
 */
public enum WireSize {
  AWG_14("14 AWG", 3.14, 20, 25),
  AWG_12("12 AWG", 1.98, 25, 30),
  AWG_10("10 AWG", 1.24, 35, 40),
  AWG_8("8 AWG", 0.778, 50, 55),
  AWG_6("6 AWG", 0.491, 65, 75),
  AWG_4("4 AWG", 0.308, 85, 95),
  AWG_3("3 AWG", 0.245, 100, 115),
  AWG_2("2 AWG", 0.194, 115, 130),
  AWG_1("1 AWG", 0.154, 130, 145),
  AWG_1_0("1/0 AWG", 0.122, 150, 170),
  AWG_2_0("2/0 AWG", 0.0967, 175, 195),
  AWG_3_0("3/0 AWG", 0.0766, 200, 225),
  AWG_4_0("4/0 AWG", 0.0608, 230, 260),
  MM2_1_5("1.5 mm²", 12.1, 13.3),
  MM2_2_5("2.5 mm²", 7.41, 7.98),
  MM2_4("4 mm²", 4.61, 4.95),
  MM2_6("6 mm²", 3.08, 3.30),
  MM2_10("10 mm²", 1.83, 1.91),
  MM2_16("16 mm²", 1.15, 1.21),
  MM2_25("25 mm²", 0.727, 0.780),
  MM2_35("35 mm²", 0.524, 0.554),
  MM2_50("50 mm²", 0.387, 0.386),
  MM2_70("70 mm²", 0.268, 0.272),
  MM2_95("95 mm²", 0.193, 0.206),
  MM2_120("120 mm²", 0.153, 0.161);

  /** What a text must look like, for messages. */
  public static final String EXPECTED =
      "a wire size such as 10 AWG, 2/0 AWG or 16 mm2: AWG 14, 12, 10, 8, 6, 4, 3, 2, 1, 1/0, 2/0,"
          + " 3/0, 4/0, or 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120 mm2";

  private static final double M_PER_1000_FT = 304.8;
  private static final double M_PER_KM = 1000.0;

  private final String label;
  private final boolean isAwg;
  private final double strandedOhmPerM;
  private final double fineOhmPerM;
  private final int ampacity75A;
  private final int ampacity90A;

  WireSize(String label, double ohmPer1000Ft, int ampacity75A, int ampacity90A) {
    this.label = label;
    this.isAwg = true;
    this.strandedOhmPerM = ohmPer1000Ft / M_PER_1000_FT;
    this.fineOhmPerM = strandedOhmPerM;
    this.ampacity75A = ampacity75A;
    this.ampacity90A = ampacity90A;
  }

  WireSize(String label, double class2OhmPerKm, double class5OhmPerKm) {
    this.label = label;
    this.isAwg = false;
    this.strandedOhmPerM = class2OhmPerKm / M_PER_KM;
    this.fineOhmPerM = class5OhmPerKm / M_PER_KM;
    this.ampacity75A = 0;
    this.ampacity90A = 0;
  }

  /** How the wire is made; the AWG table does not tell the two apart. */
  public enum Strands {
    STRANDED,
    FINE
  }

  public String label() {
    return label;
  }

  public boolean isAwg() {
    return isAwg;
  }

  /** Copper, at {@link #tableC()}. */
  double ohmPerM(Strands strands) {
    return strands == Strands.FINE ? fineOhmPerM : strandedOhmPerM;
  }

  /** The temperature at which the table gives the resistance. */
  double tableC() {
    return isAwg ? 75.0 : 20.0;
  }

  int ampacity75A() {
    return ampacity75A;
  }

  int ampacity90A() {
    return ampacity90A;
  }

  /** Null if it is no size of these tables; {@link #EXPECTED} says what would be. */
  public static @Nullable WireSize find(String text) {
    String clean =
        text.strip()
            .toUpperCase(Locale.ROOT)
            .replace('²', '2')
            .replace(',', '.')
            .replaceAll("\\s+", "");
    for (WireSize size : values()) {
      String plain = size.label.toUpperCase(Locale.ROOT).replace('²', '2').replace(" ", "");
      if (clean.equals(plain)
          || (size.isAwg && clean.equals("AWG" + plain.substring(0, plain.length() - 3)))
          || clean.equals(plain.replace("MM2", "SQMM"))) {
        return size;
      }
    }
    return null;
  }

  /** This size with up to so many smaller and larger ones of the same system. */
  List<WireSize> neighbours(int eachWay) {
    var same = new ArrayList<WireSize>();
    for (WireSize size : values()) {
      if (size.isAwg == isAwg) {
        same.add(size);
      }
    }
    int at = same.indexOf(this);
    return same.subList(Math.max(0, at - eachWay), Math.min(same.size(), at + eachWay + 1));
  }
}
