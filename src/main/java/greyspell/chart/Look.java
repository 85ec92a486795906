package greyspell.chart;

import java.util.List;

/**
 * Colours, faces, sizes and spacing of all pictures and of the pages that are made from them. The
 * colours differ in lightness as well as in hue (so that they hold for colour-blind readers and on
 * a black-and-white printer), and what matters most differs in hatch or shape besides.
 */
public final class Look {
  static final int PAPER = 0xFFFFFF;
  static final int INK = 0x1D2A33;
  static final int FAINT_INK = 0x55636D;
  static final int AXIS = 0x8A969E;
  static final int GRID = 0xE1E6E9;

  static final int SUN = 0xE9B23C;
  static final int SUN_EDGE = 0xA87410;
  static final int HOUSE = 0x24506F;
  static final int ALWAYS_ON = 0x7FA9BF;
  static final int LOSSES = 0xCBD3D8;
  static final int CHARGE = 0xA9D3C6;
  static final int CHARGE_EDGE = 0x2F7A68;
  static final int UNMET = 0xA3210F;
  static final int UNMET_PALE = 0xF7D9D2;

  /** Of every picture and page, on a screen. */
  public static final String FACE = "system-ui,'DejaVu Sans',Arial,sans-serif";

  /** Unit of all spacing on a page, px. */
  public static final int SPACE = 8;

  static final double WIDTH = 760.0;
  static final double MARGIN = 14.0;

  /** Of a picture in a column of a printed page, two of which stand side by side. */
  static final double COLUMN_WIDTH = 360.0;

  static final double COLUMN_TITLE = 12.0;
  static final double TITLE = 15.0;
  static final double SUBTITLE = 12.0;
  static final double LABEL = 12.0;
  static final double TICK = 11.0;

  /** Ends the note of every picture with an electrical figure. */
  static final String ESTIMATE_ONLY = " Estimate only: local code and licensed practice govern.";

  /** Steps of charge from empty (dark) to full (pale). */
  private static final int[] CHARGE_RAMP = {
    0x35627C, 0x467590, 0x5B89A2, 0x749DB3, 0x90B1C2, 0xADC5CF, 0xC7D6D9, 0xDCE3DE, 0xEDECE0,
    0xF8F4E3
  };

  /**
   * A colour by the name that a page's style sheet gives it.
   *
   * @param light on paper and on a light screen, 0xRRGGBB
   * @param dark on a dark screen
   */
  public record Tone(String name, int light, int dark) {
    /** "#1d2a33". */
    public static String hex(int rgb) {
      return "#" + Integer.toHexString(0x1000000 | rgb).substring(1);
    }
  }

  private static final List<Tone> TONES =
      List.of(
          new Tone("paper", PAPER, 0x161D22),
          new Tone("ink", INK, 0xE6EBEE),
          new Tone("faint", FAINT_INK, 0xA5B1B9),
          new Tone("axis", AXIS, 0x6F7D86),
          new Tone("rule", GRID, 0x39454D),
          new Tone("band", 0xF3F5F6, 0x1F282E),
          new Tone("sun", SUN, 0xE9B23C),
          new Tone("sun-edge", SUN_EDGE, 0xE0B860),
          new Tone("house", HOUSE, 0x6FA8D0),
          new Tone("always-on", ALWAYS_ON, 0x4F7F99),
          new Tone("losses", LOSSES, 0x55626B),
          new Tone("charge", CHARGE, 0x2C5A4F),
          new Tone("good", CHARGE_EDGE, 0x83CBB9),
          new Tone("bad", UNMET, 0xF09A8B),
          new Tone("bad-pale", UNMET_PALE, 0x4A211B));

  private Look() {}

  /** All colours by name. */
  public static List<Tone> tones() {
    return TONES;
  }

  /** Shades of a charge in ten steps, empty first. */
  static int[] chargeRamp() {
    return CHARGE_RAMP.clone();
  }

  /**
   * A round step (1, 2 or 5 times a power of ten) that divides 0 to {@code most} in 3 to 6 parts.
   */
  static double step(double most) {
    double raw = Math.max(most, 1e-9) / 4.0;
    double power = Math.pow(10.0, Math.floor(Math.log10(raw)));
    double part = raw / power;
    double round = part <= 1.3 ? 1.0 : part <= 2.7 ? 2.0 : part <= 6.5 ? 5.0 : 10.0;
    return round * power;
  }

  /** So many that two neighbours on a scale of this step do not read alike. */
  static int decimals(double step) {
    return Math.max(0, (int) Math.ceil(-Math.log10(step) - 1e-9));
  }
}
