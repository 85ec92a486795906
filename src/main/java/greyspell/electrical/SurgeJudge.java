package greyspell.electrical;

import greyspell.power.InverterSpec;
import greyspell.quantity.Check;
import greyspell.quantity.Show;
import greyspell.storage.BankSpec;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How far the voltage sags when a motor starts, and whether the inverter cuts off.
 *
 * <pre>
 * V = E - I R,   P = V I     so     V = [E + sqrt(E² - 4 R P)] / 2
 *
 * E  bank voltage without load              V     R  bank and cables, there and back   Ohm
 * P  surge on the alternating side over the inverter's efficiency at full power         W
 * V  at the inverter's terminals            V     I  surge current                      A
 * </pre>
 *
 * Where E² is below 4 R P there is no such voltage: bank and cables cannot deliver the surge. E is
 * the bank's nominal voltage unless another is stated; a low or cold bank stands lower and sags
 * further. Tells nothing of how long a surge lasts, nor of the bank's own protection beyond its
 * stated limit.
 *
 * <p>Source: Ohm's law with a load of constant power. Held by SurgeJudgeTest.
 */
public final class SurgeJudge {
  static final String SAG = "surge, low-voltage cut-off";
  static final String LIMIT = "surge, bank's limit";
  private static final double MARGIN_SHARE = 0.03;

  private SurgeJudge() {}

  /**
   * What is known about the surge path; anything null leaves the sag unjudged, and says so.
   *
   * @param openV bank without load, null for its nominal voltage
   * @param bankOhm of the whole bank
   * @param cableOhm bank to inverter, there and back
   * @param cutOffV below which the inverter switches off
   */
  public record Path(
      @Nullable Double openV,
      @Nullable Double bankOhm,
      @Nullable Double cableOhm,
      @Nullable Double cutOffV) {
    public Path {
      if (openV != null) {
        Check.positive("openV", openV);
      }
      if (bankOhm != null) {
        Check.notNegative("bankOhm", bankOhm);
      }
      if (cableOhm != null) {
        Check.notNegative("cableOhm", cableOhm);
      }
      if (cutOffV != null) {
        Check.positive("cutOffV", cutOffV);
      }
    }
  }

  /** Voltage under a load of constant power; NaN if it cannot be delivered. */
  public static double sagV(double openV, double loopOhm, double powerW) {
    double root = openV * openV - 4.0 * loopOhm * powerW;
    return root < 0.0 ? Double.NaN : 0.5 * (openV + Math.sqrt(root));
  }

  /** Empty if the inverter's surge power is not stated. */
  public static List<Finding> judge(InverterSpec inverter, BankSpec bank, Path path) {
    Double surgeW = inverter.surgeW();
    if (surgeW == null) {
      return List.of();
    }
    double drawnW = surgeW / fullEfficiency(inverter);
    var findings = new ArrayList<Finding>();
    if (drawnW > bank.maxDischargeW()) {
      findings.add(
          Finding.caution(
              LIMIT,
              Show.power(surgeW)
                  + " of surge draws "
                  + Show.power(drawnW)
                  + "; the bank gives "
                  + Show.power(bank.maxDischargeW()),
              "its own protection may cut off; ask the maker for the limit over seconds"));
    } else {
      findings.add(
          Finding.pass(
              LIMIT,
              Show.power(surgeW)
                  + " of surge draws "
                  + Show.power(drawnW)
                  + "; the bank gives "
                  + Show.power(bank.maxDischargeW()),
              "within the bank's limit"));
    }
    findings.add(sag(surgeW, drawnW, bank, path));
    return List.copyOf(findings);
  }

  private static Finding sag(double surgeW, double drawnW, BankSpec bank, Path path) {
    Double bankOhm = path.bankOhm();
    Double cableOhm = path.cableOhm();
    Double cutOffV = path.cutOffV();
    if (bankOhm == null || cableOhm == null || cutOffV == null) {
      var lacking = new ArrayList<String>();
      if (bankOhm == null) {
        lacking.add("the bank's resistance");
      }
      if (cableOhm == null) {
        lacking.add("the cable from bank to inverter");
      }
      if (cutOffV == null) {
        lacking.add("the inverter's low-voltage cut-off");
      }
      return Finding.caution(
          SAG,
          "not judged: state " + String.join(", ", lacking),
          "a sag below the cut-off darkens the house when a motor starts");
    }
    Double statedV = path.openV();
    double openV = statedV == null ? bank.nominalV() : statedV;
    double loopOhm = bankOhm + cableOhm;
    double sagV = sagV(openV, loopOhm, drawnW);
    String from =
        Show.power(surgeW)
            + " of surge from "
            + Show.voltage(openV)
            + (statedV == null ? " (nominal)" : "")
            + " through "
            + milliohm(bankOhm)
            + " of bank and "
            + milliohm(cableOhm)
            + " of cable: ";
    String assumed = "a low or cold bank stands lower and sags further";
    if (Double.isNaN(sagV)) {
      return Finding.fail(SAG, from + "cannot be delivered at any voltage", assumed);
    }
    String text =
        from
            + Show.current(drawnW / sagV)
            + ", the voltage sags to "
            + Show.voltage(sagV)
            + "; cut-off at "
            + Show.voltage(cutOffV);
    if (!(sagV >= cutOffV)) {
      return Finding.fail(SAG, text, "the inverter would switch off; " + assumed);
    }
    return sagV < cutOffV * (1.0 + MARGIN_SHARE)
        ? Finding.caution(SAG, text, "hardly any room; " + assumed)
        : Finding.pass(SAG, text, assumed);
  }

  /** At the data sheet's highest point up to full power; the first one if all lie above. */
  static double fullEfficiency(InverterSpec inverter) {
    InverterSpec.EfficiencyAt found = inverter.efficiencies().get(0);
    for (InverterSpec.EfficiencyAt point : inverter.efficiencies()) {
      if (point.loadShare() > found.loadShare() && point.loadShare() <= 1.0) {
        found = point;
      }
    }
    return found.efficiency();
  }

  private static String milliohm(double ohm) {
    return Show.trimmed(1000.0 * ohm, 2) + " mΩ";
  }
}
