package greyspell.storage;

import greyspell.quantity.Check;
import greyspell.storage.VoltageCurve.VoltageAt;
import java.util.List;

/**
 * What a bank reckoned in detail needs beyond its constant efficiencies; of the whole bank.
 *
 * @param voltageByCharge without load, rising in charge, voltage never falling
 * @param resistanceOhm at 25 °C, as the bank is now
 * @param resistanceByTemperature factors on it, rising in temperature; straight lines between,
 *     level outside
 * @param coulombicEfficiency charge out over charge in
 * @param isLossStated losses follow the stated efficiencies and not the resistance
 * @param taperFromShare above this charge acceptance falls
 * @param taperTopShare acceptance left when full, as a share of the charging limit
 */
public record CellSheet(
    List<VoltageAt> voltageByCharge,
    double resistanceOhm,
    List<FactorAt> resistanceByTemperature,
    double coulombicEfficiency,
    boolean isLossStated,
    double taperFromShare,
    double taperTopShare) {
  public CellSheet {
    voltageByCharge = List.copyOf(voltageByCharge);
    resistanceByTemperature = List.copyOf(resistanceByTemperature);
    Check.within("points of voltageByCharge", voltageByCharge.size(), 1, 1000);
    for (int i = 1; i < voltageByCharge.size(); i++) {
      VoltageAt before = voltageByCharge.get(i - 1);
      Check.within(
          "chargeShare of a point of voltageByCharge",
          voltageByCharge.get(i).chargeShare(),
          Math.nextUp(before.chargeShare()),
          1.0);
      Check.within(
          "openV of a point of voltageByCharge",
          voltageByCharge.get(i).openV(),
          before.openV(),
          Double.MAX_VALUE);
    }
    Check.positive("resistanceOhm", resistanceOhm);
    Check.within("points of resistanceByTemperature", resistanceByTemperature.size(), 1, 1000);
    for (int i = 1; i < resistanceByTemperature.size(); i++) {
      Check.within(
          "temperatureC of a point of resistanceByTemperature",
          resistanceByTemperature.get(i).temperatureC(),
          Math.nextUp(resistanceByTemperature.get(i - 1).temperatureC()),
          Double.MAX_VALUE);
    }
    Check.within("coulombicEfficiency", coulombicEfficiency, 0.3, 1.0);
    Check.share("taperFromShare", taperFromShare);
    Check.within("taperTopShare", taperTopShare, 1e-3, 1.0);
  }

  /** By how much the resistance differs from that at 25 °C. */
  public record FactorAt(double temperatureC, double resistanceFactor) {
    public FactorAt {
      Check.finite("temperatureC", temperatureC);
      Check.within("resistanceFactor", resistanceFactor, 0.01, 100.0);
    }
  }

  /** The same with another resistance. */
  public CellSheet withResistanceOhm(double ohm) {
    return new CellSheet(
        voltageByCharge,
        ohm,
        resistanceByTemperature,
        coulombicEfficiency,
        isLossStated,
        taperFromShare,
        taperTopShare);
  }

  /** Hour by hour, for {@link greyspell.storage.step.CellStep}. */
  public double[] resistanceFactors(double[] bankC) {
    int points = resistanceByTemperature.size();
    var atC = new double[points];
    var factor = new double[points];
    for (int i = 0; i < points; i++) {
      atC[i] = resistanceByTemperature.get(i).temperatureC();
      factor[i] = resistanceByTemperature.get(i).resistanceFactor();
    }
    var line = new Line(atC, factor);
    var out = new double[bankC.length];
    for (int h = 0; h < out.length; h++) {
      out[h] = line.at(bankC[h]);
    }
    return out;
  }
}
