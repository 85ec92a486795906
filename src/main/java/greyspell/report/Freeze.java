package greyspell.report;

import java.util.regex.Pattern;

/** What may freeze when it is switched off. */
final class Freeze {
  private static final Pattern WARMS =
      Pattern.compile("pump|heat|boiler|frost|furnace|stove", Pattern.CASE_INSENSITIVE);

  private Freeze() {}

  /** With a blank before it; empty where the name says nothing of water or warmth. */
  static String warning(String name) {
    return WARMS.matcher(name).find() ? " Make sure first that nothing can freeze." : "";
  }
}
