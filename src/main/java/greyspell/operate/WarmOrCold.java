package greyspell.operate;

import java.util.regex.Pattern;

/**
 * What warms or cools, by its name in English or German: left off, pipes may freeze or food may
 * spoil. A name that says neither is known by its model, or its owner marks it as one that must
 * run.
 */
public final class WarmOrCold {
  private static final Pattern WARMS =
      Pattern.compile("pump|heat|boiler|frost|furnace|stove|heiz|kessel", Pattern.CASE_INSENSITIVE);
  private static final Pattern COOLS =
      Pattern.compile(
          "fridge|freez|refriger|cooler|chill|larder|kühl|kuehl|gefrier", Pattern.CASE_INSENSITIVE);

  private WarmOrCold() {}

  /** Whether something may freeze without it. */
  public static boolean warms(String name) {
    return WARMS.matcher(name).find();
  }

  /** Whether food may spoil without it. */
  public static boolean cools(String name) {
    return COOLS.matcher(name).find();
  }

  static boolean isIn(String name) {
    return warms(name) || cools(name);
  }
}
