package greyspell.array;

import greyspell.calendar.HourCalendar;
import org.jspecify.annotations.Nullable;

/**
 * What one plane of panels brings to the controller, and what is lost on the way, by name.
 *
 * <pre>
 * nominal   = front / 1000 Pr
 * light     = absorbed (1 - shade) (1 - soiling) (1 - snow)            W/m²   see {@link CellHours}
 * Tc        = cell temperature                                         °C     see {@link CellHours}
 * power     = modules × {@link ModulePower} at light and Tc
 * wired     = power (1 - mismatch) (1 - ageing) (1 - wiring)
 * held      = wired × share                                            see {@link ControllerInput}
 * available = held - (held / V)² R                                     cable to the controller
 *
 * front     light on the glass                        W/m²      Pr     rated power of the plane   W
 * V         voltage at which the string works          V        R      of the cable, there and back  ohm
 * absorbed  of it, what gets past the glass at its    W/m²      shade, soiling   share, by month
 *           angle of incidence                                  share  of the maximum power that the
 *                                                                      controller's voltage leaves
 * </pre>
 *
 * An hour is taken at its mean light. Each loss is the difference between two neighbouring lines,
 * so that nominal minus all losses is available. The cable's loss is a flat share, or follows from
 * its resistance where that is stated. Every plane is taken as having a controller input of its
 * own; what joining planes on one input costs is in {@link PlanesTogether}. Where no single-diode
 * curve fits the data sheet, the voltage is taken as suiting a tracking controller, and one that
 * does not track is refused.
 */
public final class SolarChain {
  /** Taken where the weather has no wind: the wind of the nominal cell temperature. */
  public static final double ASSUMED_WIND_MS = 1.0;

  private final SolarHours out;
  private final CellHours cells;

  private SolarChain(SolarHours out, int hours) {
    this.out = out;
    cells = CellHours.empty(hours);
  }

  /** On a controller that tracks the maximum-power point wherever it lies. */
  public static SolarHours run(
      ArraySpec array,
      ModulePower power,
      HourCalendar calendar,
      double[] frontWm2,
      double[] absorbedWm2,
      double[] airC,
      double @Nullable [] windMs) {
    return run(
        array, power, calendar, frontWm2, absorbedWm2, airC, windMs, ControllerInput.boundless());
  }

  /** With the flat share of the array for its cable. */
  public static SolarHours run(
      ArraySpec array,
      ModulePower power,
      HourCalendar calendar,
      double[] frontWm2,
      double[] absorbedWm2,
      double[] airC,
      double @Nullable [] windMs,
      ControllerInput input) {
    return run(array, power, calendar, frontWm2, absorbedWm2, airC, windMs, null, input, 0.0);
  }

  /**
   * Runs one plane through all hours.
   *
   * @param power of one module, see {@link PowerModel#of}
   * @param frontWm2 light on the plane, one value an hour
   * @param absorbedWm2 of it, past the glass
   * @param windMs null takes {@link #ASSUMED_WIND_MS}
   * @param coveredShare of the plane under snow, see {@link SnowCover}; null for none
   * @param input of the controller
   * @param cableOhm there and back, all strings of the plane on it; 0 where only the flat share
   *     holds
   * @throws IllegalArgumentException for a controller that does not track with a module whose curve
   *     is not known, see {@link #isVoltageKnown}
   */
  public static SolarHours run(
      ArraySpec array,
      ModulePower power,
      HourCalendar calendar,
      double[] frontWm2,
      double[] absorbedWm2,
      double[] airC,
      double @Nullable [] windMs,
      double @Nullable [] coveredShare,
      ControllerInput input,
      double cableOhm) {
    int hours = frontWm2.length;
    return new SolarChain(new SolarHours(hours), hours)
        .fill(
            array,
            power,
            calendar,
            frontWm2,
            absorbedWm2,
            airC,
            windMs,
            coveredShare,
            input,
            cableOhm);
  }

  /**
   * One whose arrays are filled again and again, and in which nothing but {@link
   * SolarHours#availableWh} is to be read.
   */
  public static SolarChain availableOnly(int hours) {
    return new SolarChain(SolarHours.availableOnly(hours), hours);
  }

  /** As {@link #run}, into this chain's own arrays. */
  public SolarHours fill(
      ArraySpec array,
      ModulePower power,
      HourCalendar calendar,
      double[] frontWm2,
      double[] absorbedWm2,
      double[] airC,
      double @Nullable [] windMs,
      double @Nullable [] coveredShare,
      ControllerInput input,
      double cableOhm) {
    cells.fill(array, calendar, frontWm2, absorbedWm2, airC, windMs);
    double[] lightWm2 = cells.lightWm2();
    double[] cellC = cells.cellC();
    WorkingVoltage voltage = voltage(array, power, input, cableOhm > 0.0);
    double sheetV = array.module().maxPowerV() * array.inSeries();
    int hours = frontWm2.length;
    double[] nominalWh = out.nominalWh();
    double[] incidenceWh = out.lossWh(ArrayLoss.INCIDENCE);
    double[] shadeWh = out.lossWh(ArrayLoss.SHADE);
    double[] soilingWh = out.lossWh(ArrayLoss.SOILING);
    double[] snowWh = out.lossWh(ArrayLoss.SNOW);
    double[] deltaWh = out.lossWh(ArrayLoss.TEMPERATURE_AND_LOW_LIGHT_DELTA);
    double[] mismatchWh = out.lossWh(ArrayLoss.MISMATCH);
    double[] ageingWh = out.lossWh(ArrayLoss.AGEING);
    double[] wiringWh = out.lossWh(ArrayLoss.ARRAY_WIRING);
    double[] heldWh = out.lossWh(input.loss());
    double[] cableHeatWh = out.cableHeatWh();
    double[] availableWh = out.availableWh();

    int modules = array.modules();
    double perWm2 = array.ratedPowerW() / TestConditions.IRRADIANCE_WM2;
    for (int h = 0; h < hours; h++) {
      double front = frontWm2[h];
      if (!(front > 0.0)) {
        availableWh[h] = 0.0;
        if (voltage != null) {
          voltage.dark();
        }
        continue;
      }
      double absorbed = absorbedWm2[h];
      double shaded = absorbed * (1.0 - array.shadeFraction().in(calendar.month(h)));
      double clean = lightWm2[h];
      double light = coveredShare == null ? clean : clean * (1.0 - coveredShare[h]);

      nominalWh[h] = front * perWm2;
      incidenceWh[h] = (front - absorbed) * perWm2;
      shadeWh[h] = (absorbed - shaded) * perWm2;
      soilingWh[h] = (shaded - clean) * perWm2;
      snowWh[h] = (clean - light) * perWm2;
      if (!(light > 0.0)) { // snow on all of it
        availableWh[h] = 0.0;
        if (voltage != null) {
          voltage.dark();
        }
        continue;
      }
      double moduleWh =
          voltage == null ? power.powerW(light, cellC[h]) : voltage.openHour(light, cellC[h]);
      double poweredWh = modules * moduleWh;
      deltaWh[h] = light * perWm2 - poweredWh;
      double matchedWh = poweredWh * (1.0 - array.mismatchFraction());
      mismatchWh[h] = poweredWh - matchedWh;
      double agedWh = matchedWh * (1.0 - array.ageingFraction());
      ageingWh[h] = matchedWh - agedWh;
      double wiredWh = agedWh * (1.0 - array.wiringFraction());
      wiringWh[h] = agedWh - wiredWh;
      double keptWh = voltage == null ? wiredWh : wiredWh * voltage.powerShare(h, light, cellC[h]);
      heldWh[h] = wiredWh - keptWh;
      if (cableOhm > 0.0 && keptWh > 0.0) {
        double currentA = keptWh / (voltage == null ? sheetV : voltage.stringV());
        double heatWh = currentA * currentA * cableOhm;
        heatWh = heatWh < keptWh ? heatWh : keptWh;
        wiringWh[h] += heatWh;
        cableHeatWh[h] = heatWh;
        keptWh -= heatWh;
      }
      availableWh[h] = keptWh;
    }
    return out;
  }

  /**
   * False where no single-diode curve fits the data sheet, so that only tracking can be reckoned.
   */
  public static boolean isVoltageKnown(ModuleSpec module) {
    return DataSheetFit.of(module).diode() != null;
  }

  /** Null where nobody asks for the voltage or it is not known. */
  private static @Nullable WorkingVoltage voltage(
      ArraySpec array, ModulePower power, ControllerInput input, boolean isAsked) {
    if (input.isBoundless() && !isAsked) {
      return null;
    }
    SingleDiode diode =
        power instanceof SingleDiodePower known
            ? known.diode()
            : DataSheetFit.of(array.module()).diode();
    if (diode != null) {
      return new WorkingVoltage(power, diode, array.inSeries(), input);
    }
    if (input.kind() == ControllerKind.PWM) {
      throw new IllegalArgumentException(
          "module " + array.module().name() + ": no curve, so no power at the bank's voltage");
    }
    return null;
  }
}
