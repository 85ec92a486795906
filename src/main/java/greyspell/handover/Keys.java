package greyspell.handover;

import java.util.List;

/** Keys of the heads of tables that stand in more than one place. */
final class Keys {
  static final List<String> SUN_NEED =
      List.of("head.month", "head.sun", "head.left_over", "head.need", "head.unmet");
  static final List<String> SPELL_DAYS =
      List.of("head.day", "head.sun", "head.need", "head.charge", "head.unmet", "head.hours");
  static final List<String> CAUSES =
      List.of("head.cause", "head.whose", "head.kwh_all", "head.share");

  private Keys() {}
}
