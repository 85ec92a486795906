package greyspell.handover;

import java.util.List;

/** Keys of the heads of tables that stand in more than one place. */
final class Keys {
  static final List<String> CAUSES =
      List.of("head.cause", "head.whose", "head.kwh_all", "head.share");

  private Keys() {}

  static List<String> sunNeed(boolean hasOther) {
    return List.of("head.month", sun(hasOther), "head.left_over", "head.need", "head.unmet");
  }

  static List<String> spellDays(boolean hasOther) {
    return List.of(
        "head.day", sun(hasOther), "head.need", "head.charge", "head.unmet", "head.hours");
  }

  /** A second source counts with the sun, and then the head says so. */
  private static String sun(boolean hasOther) {
    return hasOther ? "head.both" : "head.sun";
  }
}
