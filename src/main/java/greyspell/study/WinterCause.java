package greyspell.study;

import java.util.Locale;

/**
 * A cause that takes a share of what was not served. Each stands for a run without it, whole winters
 * long.
 */
public enum WinterCause {
  DAY_LENGTH(true),
  USUAL_CLOUD(true),
  MORE_CLOUD(true),
  SNOW(false),
  SOILING(false),
  SHADE(false),
  PANEL_LOSSES(false),
  CONTROLLER(false),
  WIRING(false),
  STANDBY(false),
  CONVERSION(false),
  COLD_BANK(false),
  TIRED_BANK(false),
  BANK_LIMITS(false),
  INVERTER_LIMIT(false),
  LOAD_THAT_DAY(false),
  /** All that were too small to stand alone, left out together. */
  SMALLER_TOGETHER(false);

  private final boolean isSeason;

  WinterCause(boolean isSeason) {
    this.isSeason = isSeason;
  }

  /** Nobody's fault: the sun and the sky. All others can be mended, at some cost. */
  public boolean isSeason() {
    return isSeason;
  }

  /** Key of its words: "cause.snow". */
  public String key() {
    return "cause." + name().toLowerCase(Locale.ROOT);
  }
}
