package greyspell.study;

import java.util.Locale;
import java.util.Set;

/**
 * A cause that takes a share of what was not served. Each stands for a run without it, whole
 * winters long.
 */
public enum WinterCause {
  SHORT_DAYS(true, Effect.SHORT_DAYS),
  USUAL_CLOUD(true, Effect.USUAL_CLOUD),
  MORE_CLOUD(true, Effect.MORE_CLOUD),
  SNOW(false, Effect.SNOW),
  SOILING(false, Effect.SOILING),
  SHADE(false, Effect.SHADE),
  PANEL_LOSSES(
      false, Effect.INCIDENCE, Effect.CELL_TEMPERATURE, Effect.MISMATCH, Effect.MODULE_AGE),
  CONTROLLER(false, Effect.CONTROLLER_LIMIT, Effect.TRACKING_WINDOW, Effect.HELD_AT_BANK_VOLTAGE),
  WIRING(false, Effect.ARRAY_WIRING, Effect.BUS_WIRING),
  STANDBY(false, Effect.STANDBY),
  CONVERSION(
      false, Effect.CONTROLLER_LOSS, Effect.INVERTER_LOSS, Effect.CELL_LOSS, Effect.SELF_DISCHARGE),
  COLD_BANK(false, Effect.COLD_BANK),
  COLD_CHARGING(false, Effect.COLD_CHARGING),
  TIRED_BANK(false, Effect.BANK_HEALTH),
  BANK_LIMITS(false, Effect.BANK_RATE, Effect.ABSORPTION, Effect.TWO_TANKS),
  INVERTER_LIMIT(false, Effect.INVERTER_LIMIT, Effect.SEARCH),
  THAT_DAYS_LOAD(false, Effect.THAT_DAYS_LOAD),
  GROWTH_MARGIN(false, Effect.GROWTH),
  /** All that were too small to stand alone, left out together. */
  SMALLER_TOGETHER(false);

  private final boolean isSeason;
  private final Set<Effect> effects;

  WinterCause(boolean isSeason, Effect... effects) {
    this.isSeason = isSeason;
    this.effects = Set.of(effects);
  }

  /** Nobody's fault: the sun and the sky. All others can be mended, at some cost. */
  public boolean isSeason() {
    return isSeason;
  }

  /** What a run without it leaves out; empty for those that are gathered from others. */
  public Set<Effect> effects() {
    return effects;
  }

  /** Key of its words: "cause.snow". */
  public String key() {
    return "cause." + name().toLowerCase(Locale.ROOT);
  }
}
