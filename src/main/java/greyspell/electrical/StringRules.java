package greyspell.electrical;

import greyspell.quantity.Check;
import greyspell.storage.BankSpec;
import org.jspecify.annotations.Nullable;

/**
 * What strings are judged against besides the controller's own sheet.
 *
 * @param recordLowC coldest air ever noted at the site; null is refused, never guessed
 * @param recordHighC hottest air ever noted at the site; null is refused, never guessed
 * @param dwellingLimitV highest voltage that is allowed in this building, null for none
 * @param bankV nominal voltage of the bank
 * @param chargingV highest voltage to which the bank is charged
 * @param headroomV how far above the charging voltage a controller needs its input
 * @param marginShare share of a limit within which "it fits" is not said
 */
public record StringRules(
    @Nullable Double recordLowC,
    @Nullable Double recordHighC,
    @Nullable Double dwellingLimitV,
    double bankV,
    double chargingV,
    double headroomV,
    double marginShare) {
  /** One- and two-family dwellings: NEC 690.7, 2017 to 2023 editions (from memory). */
  public static final double DWELLING_LIMIT_V = 600.0;

  /** Common practice, no source. */
  public static final double USUAL_HEADROOM_V = 5.0;

  /** Common practice, no source: two to three per cent are swallowed by tolerances. */
  public static final double USUAL_MARGIN_SHARE = 0.03;

  // Charging over nominal voltage; common practice, no source: 3.6 V over 3.2 V a cell, and 14.4 V
  // over 12 V. Wet lead-acid is charged higher still when it is equalized.
  private static final double LITHIUM_CHARGING_FACTOR = 1.125;
  private static final double LEAD_CHARGING_FACTOR = 1.2;

  public StringRules {
    if (recordLowC != null) {
      Check.within("recordLowC", recordLowC, -90.0, 60.0);
    }
    if (recordHighC != null) {
      Check.within("recordHighC", recordHighC, recordLowC == null ? -90.0 : recordLowC, 70.0);
    }
    if (dwellingLimitV != null) {
      Check.positive("dwellingLimitV", dwellingLimitV);
    }
    Check.positive("bankV", bankV);
    Check.positive("chargingV", chargingV);
    Check.notNegative("headroomV", headroomV);
    Check.within("marginShare", marginShare, 0.0, 0.5);
  }

  /** The usual rules for a dwelling with this bank. */
  public static StringRules usual(
      @Nullable Double recordLowC, @Nullable Double recordHighC, BankSpec bank) {
    return new StringRules(
        recordLowC,
        recordHighC,
        DWELLING_LIMIT_V,
        bank.nominalV(),
        usualChargingV(bank),
        USUAL_HEADROOM_V,
        USUAL_MARGIN_SHARE);
  }

  /** Highest charging voltage of banks of this kind. */
  public static double usualChargingV(BankSpec bank) {
    return bank.nominalV()
        * switch (bank.chemistry()) {
          case LITHIUM_IRON_PHOSPHATE -> LITHIUM_CHARGING_FACTOR;
          case LEAD_ACID_FLOODED, LEAD_ACID_SEALED -> LEAD_CHARGING_FACTOR;
        };
  }

  /** Null for a building without such a limit. */
  public StringRules withDwellingLimitV(@Nullable Double limitV) {
    return new StringRules(
        recordLowC, recordHighC, limitV, bankV, chargingV, headroomV, marginShare);
  }

  public StringRules withChargingV(double voltageV) {
    return new StringRules(
        recordLowC, recordHighC, dwellingLimitV, bankV, voltageV, headroomV, marginShare);
  }

  /** 0 for a controller that joins the strings straight to the bank. */
  public StringRules withHeadroomV(double voltageV) {
    return new StringRules(
        recordLowC, recordHighC, dwellingLimitV, bankV, chargingV, voltageV, marginShare);
  }
}
