package greyspell.scenario;

import greyspell.array.ArraySpec;
import greyspell.array.ControllerSpec;
import greyspell.array.ModuleSpec;
import greyspell.electrical.StringGlance;
import greyspell.load.ApplianceSpec;
import greyspell.load.LoadPlan;
import greyspell.power.InverterSpec;
import greyspell.quantity.Show;
import greyspell.sky.Site;
import greyspell.storage.BankSpec;
import greyspell.storage.CellSheet;
import greyspell.storage.Chemistry;
import greyspell.storage.Enclosure;
import greyspell.storage.VoltageCurve;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What is possible, but unusual enough to ask whether it is meant. Nothing is changed. */
final class Plausibility {
  private static final double HALF_TURN_DEG = 180.0;
  private static final double DEG_PER_H = 15.0;
  private static final double EVENING_H = 17.0;
  private static final double MORNING_H = 7.0;
  private static final double MOST_CHARGING = 1.35;
  private static final int DAYS_PER_WEEK = 7;

  private final Border border;

  Plausibility(Border border) {
    this.border = border;
  }

  void judge(
      Site site,
      List<ArraySpec> arrays,
      ControllerSpec controller,
      BankSpec bank,
      InverterSpec inverter,
      LoadPlan load) {
    judgeClock(site);
    double fieldW = 0.0;
    for (ArraySpec array : arrays) {
      judgePlane(site, array);
      judgeSheet(array.module());
      fieldW += array.ratedPowerW();
    }
    StringGlance.of(arrays, controller, site.recordLowC()).forEach(border::caution);
    judgeSizes(fieldW, bank);
    judgeBank(site, bank);
    judgeLoads(site, bank, inverter, load);
  }

  private void judgeClock(Site site) {
    double sunOffsetH = site.longitudeDeg() / DEG_PER_H;
    double apartH = Math.abs(site.utcOffsetH() - sunOffsetH);
    if (Math.min(apartH, 24.0 - apartH) > 2.0) {
      border.caution(
          "utc_offset "
              + Show.trimmed(site.utcOffsetH(), 2)
              + " h is more than 2 h from the sun's "
              + Show.trimmed(sunOffsetH, 1)
              + " h at this longitude: is the sign of the longitude right, and is it standard"
              + " time?");
    }
  }

  private void judgePlane(Site site, ArraySpec array) {
    double equatorDeg = site.isNorthern() ? HALF_TURN_DEG : 0.0;
    double turned = Math.abs(array.azimuthDeg() - equatorDeg) % 360.0;
    double awayDeg = Math.min(turned, 360.0 - turned);
    if (awayDeg > 90.0 && array.tiltDeg() >= 10.0) {
      border.caution(
          array.name()
              + ": panels at "
              + Show.angle(array.azimuthDeg())
              + " face away from the equator, which lies to the "
              + (site.isNorthern() ? "south" : "north")
              + " here.");
    }
    if (Math.abs(site.latitudeDeg()) > 40.0 && array.tiltDeg() < 15.0) {
      border.caution(
          array.name()
              + ": a tilt of "
              + Show.angle(array.tiltDeg())
              + " is flat for latitude "
              + Show.angle(site.latitudeDeg())
              + ": the winter sun is low, and snow and dirt stay.");
    }
  }

  private void judgeSheet(ModuleSpec module) {
    double productW = module.maxPowerV() * module.maxPowerA();
    double off = productW / module.ratedPowerW() - 1.0;
    if (Math.abs(off) > 0.03) {
      border.caution(
          module.name()
              + ": rated power "
              + Show.power(module.ratedPowerW())
              + ", but max_power_voltage times max_power_current is "
              + Show.power(productW)
              + " ("
              + Show.percent(Math.abs(off))
              + (off > 0 ? " more" : " less")
              + "): one of the three is misread.");
    }
  }

  private void judgeSizes(double fieldW, BankSpec bank) {
    if (fieldW > 200_000.0) {
      border.caution("The panels add up to " + Show.power(fieldW) + ": is that a house?");
    }
    if (bank.capacityWh() > 1_000_000.0) {
      border.caution("The bank holds " + Show.energy(bank.capacityWh()) + ": is that a house?");
    }
  }

  private void judgeBank(Site site, BankSpec bank) {
    boolean isLithium = bank.chemistry() == Chemistry.LITHIUM_IRON_PHOSPHATE;
    if (!isLithium && bank.reserveFraction() < 0.3) {
      border.caution(
          "A reserve of "
              + Show.percent(bank.reserveFraction())
              + " wears lead-acid batteries out quickly; 50 % is usual.");
    }
    Double lowC = site.recordLowC();
    if (bank.enclosure() instanceof Enclosure.Outdoors
        && lowC != null
        && lowC < bank.coldestChargeC()) {
      border.caution(
          "The bank stands outdoors, where it has been "
              + Show.temperature(lowC)
              + "; below "
              + Show.temperature(bank.coldestChargeC())
              + " it takes no charge.");
    }
  }

  /** Bank voltage against what the inverter works with, both optional. */
  void judgeInput(BankSpec bank, @Nullable Double lowestV, @Nullable Double highestV) {
    if ((lowestV != null && bank.nominalV() < lowestV)
        || (highestV != null && bank.nominalV() > highestV)) {
      border.caution(
          "The bank has "
              + Show.voltage(bank.nominalV())
              + ", and the inverter works from "
              + (lowestV == null ? "0 V" : Show.voltage(lowestV))
              + " to "
              + (highestV == null ? "any" : Show.voltage(highestV))
              + ": they do not fit.");
    }
  }

  /** Voltages that do not belong to this bank. */
  void judgeElectrical(BankSpec bank, Scenario.Electrical electrical) {
    double nominalV = bank.nominalV();
    Double chargingV = electrical.chargingV();
    if (chargingV != null && (chargingV <= nominalV || chargingV > MOST_CHARGING * nominalV)) {
      border.caution(
          "charging_voltage "
              + Show.voltage(chargingV)
              + " for a bank of "
              + Show.voltage(nominalV)
              + ": lithium is usually charged to 1.13 times, lead-acid to 1.2 times its nominal"
              + " voltage.");
    }
    CellSheet cells = bank.cells();
    if (cells != null && chargingV != null) {
      double fullV = new VoltageCurve(cells.voltageByCharge()).openV(bank.fullFraction());
      if (chargingV <= fullV) {
        border.caution(
            "charging_voltage "
                + Show.voltage(chargingV)
                + " is not above the bank's "
                + Show.voltage(fullV)
                + " when full: it will never be full.");
      }
    }
    Double cutOffV = electrical.cutOffV();
    if (cutOffV != null && cutOffV >= nominalV) {
      border.caution(
          "cut_off_voltage "
              + Show.voltage(cutOffV)
              + " is not below the bank's "
              + Show.voltage(nominalV)
              + ": the inverter would switch off early.");
    }
  }

  private void judgeLoads(Site site, BankSpec bank, InverterSpec inverter, LoadPlan load) {
    int midwinter = site.isNorthern() ? 12 : 6;
    double nightWh = inverter.standbyNightW() * (24.0 - EVENING_H + MORNING_H);
    for (ApplianceSpec appliance : load.appliances()) {
      nightWh += appliance.isWeatherDriven() ? 0.0 : nightWh(appliance, midwinter);
      if (!appliance.isDirectCurrent() && appliance.powerW() > inverter.continuousW()) {
        border.caution(
            appliance.name()
                + " takes "
                + Show.power(appliance.powerW())
                + ", more than the inverter's "
                + Show.power(inverter.continuousW())
                + ": it will never run.");
      }
      if (appliance.isMedical()) {
        border.caution(
            appliance.name()
                + " is marked medical: no solar home is sure enough for it. Keep a backup of its"
                + " own, and ask the people who prescribed it.");
      }
    }
    if (!load.appliances().isEmpty() && bank.usableWh() < nightWh) {
      border.caution(
          "The bank gives "
              + Show.energy(bank.usableWh())
              + " above its reserve, less than the "
              + Show.energy(nightWh)
              + " of one midwinter night.");
    }
  }

  /** Asked for from the evening to the morning of a mean day of this month. */
  private static double nightWh(ApplianceSpec appliance, int month) {
    double hours = 0.0;
    for (ApplianceSpec.HourSpan span : appliance.hours()) {
      if (span.fromH() < span.toH()) {
        hours += nightHours(span.fromH(), span.toH());
      } else {
        hours += nightHours(span.fromH(), 24.0) + nightHours(0.0, span.toH());
      }
    }
    double runW = appliance.powerW() * appliance.dutyShare() * appliance.monthFactor().in(month);
    return appliance.quantity() * runW * hours * appliance.days().size() / DAYS_PER_WEEK;
  }

  private static double nightHours(double fromH, double toH) {
    return Math.max(0.0, Math.min(toH, MORNING_H) - fromH)
        + Math.max(0.0, toH - Math.max(fromH, EVENING_H));
  }
}
