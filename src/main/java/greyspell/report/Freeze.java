package greyspell.report;

import greyspell.operate.WarmOrCold;

/** What may freeze or spoil when it is switched off. */
final class Freeze {
  private Freeze() {}

  /** With a blank before it; empty where the name says nothing of water, warmth or food. */
  static String warning(String name) {
    if (WarmOrCold.warms(name)) {
      return " Make sure first that nothing can freeze.";
    }
    return WarmOrCold.cools(name) ? " Mind the food in it." : "";
  }
}
