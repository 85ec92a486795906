package greyspell.array;

import greyspell.calendar.HourCalendar;
import org.jspecify.annotations.Nullable;

/**
 * What one plane of panels brings to the controller, and what is lost on the way, by name.
 *
 * <pre>
 * nominal   = front / 1000 Pr
 * light     = absorbed (1 - shade) (1 - soiling)                       W/m²
 * Tc        = cell temperature at front (1 - shade)                    see {@link CellTemperature}
 * power     = modules × {@link ModulePower} at light and Tc
 * available = power (1 - mismatch) (1 - ageing) (1 - wiring)
 *
 * front     light on the glass                        W/m²      Pr  rated power of the plane   W
 * absorbed  of it, what gets past the glass at its    W/m²      shade, soiling   share, by month
 *           angle of incidence
 * </pre>
 *
 * An hour is taken at its mean light. Dirt takes light from the cells but warms the glass, so it
 * does not cool them. Each loss is the difference between two neighbouring lines, so that nominal
 * minus all losses is available. Wiring is a flat share for now.
 */
public final class SolarChain {
  /** Taken where the weather has no wind: the wind of the nominal cell temperature. */
  public static final double ASSUMED_WIND_MS = 1.0;

  private SolarChain() {}

  /**
   * Runs one plane through all hours.
   *
   * @param power of one module, see {@link PowerModel#of}
   * @param frontWm2 light on the plane, one value an hour
   * @param absorbedWm2 of it, past the glass
   * @param windMs null takes {@link #ASSUMED_WIND_MS}
   */
  public static SolarHours run(
      ArraySpec array,
      ModulePower power,
      HourCalendar calendar,
      double[] frontWm2,
      double[] absorbedWm2,
      double[] airC,
      double @Nullable [] windMs) {
    int hours = frontWm2.length;
    if (hours > calendar.hours() || absorbedWm2.length != hours || airC.length < hours) {
      throw new IllegalArgumentException("columns of different lengths");
    }
    var out = new SolarHours(hours);
    double[] nominalWh = out.nominalWh();
    double[] incidenceWh = out.lossWh(ArrayLoss.INCIDENCE);
    double[] shadeWh = out.lossWh(ArrayLoss.SHADE);
    double[] soilingWh = out.lossWh(ArrayLoss.SOILING);
    double[] deltaWh = out.lossWh(ArrayLoss.TEMPERATURE_AND_LOW_LIGHT_DELTA);
    double[] mismatchWh = out.lossWh(ArrayLoss.MISMATCH);
    double[] ageingWh = out.lossWh(ArrayLoss.AGEING);
    double[] wiringWh = out.lossWh(ArrayLoss.ARRAY_WIRING);
    double[] availableWh = out.availableWh();

    CellTemperature heat = CellTemperature.of(array.module(), array.choices());
    int modules = array.modules();
    double perWm2 = array.ratedPowerW() / TestConditions.IRRADIANCE_WM2;
    for (int h = 0; h < hours; h++) {
      double front = frontWm2[h];
      if (!(front > 0.0)) {
        continue;
      }
      int month = calendar.month(h);
      double unshaded = 1.0 - array.shadeFraction().in(month);
      double absorbed = absorbedWm2[h];
      double shaded = absorbed * unshaded;
      double light = shaded * (1.0 - array.soilingFraction().in(month));
      double wind = windMs == null ? ASSUMED_WIND_MS : windMs[h];
      double cellC = heat.cellC(front * unshaded, airC[h], wind);

      nominalWh[h] = front * perWm2;
      incidenceWh[h] = (front - absorbed) * perWm2;
      shadeWh[h] = (absorbed - shaded) * perWm2;
      soilingWh[h] = (shaded - light) * perWm2;
      double poweredWh = modules * power.powerW(light, cellC);
      deltaWh[h] = light * perWm2 - poweredWh;
      double matchedWh = poweredWh * (1.0 - array.mismatchFraction());
      mismatchWh[h] = poweredWh - matchedWh;
      double agedWh = matchedWh * (1.0 - array.ageingFraction());
      ageingWh[h] = matchedWh - agedWh;
      availableWh[h] = agedWh * (1.0 - array.wiringFraction());
      wiringWh[h] = agedWh - availableWh[h];
    }
    return out;
  }
}
