package greyspell.report;

import greyspell.outcome.Figures;
import greyspell.outcome.Figures.Beyond;
import greyspell.outcome.Figures.Named;
import greyspell.outcome.Outcome.MonthBooks;
import greyspell.study.StudyResult;
import java.util.ArrayList;
import java.util.List;

/** The books month by month as CSV, kWh to three decimals. */
final class MonthsCsv {
  /** Only in homes with generator, second source, rules or a bank followed by its voltage. */
  private static final List<String> BEYOND =
      List.of(
          "unmet_cut_off_kwh",
          "unmet_slow_kwh",
          "unmet_asleep_kwh",
          "shed_kwh",
          "put_off_kwh",
          "made_up_kwh",
          "curtailed_absorption_kwh",
          "other_used_kwh",
          "other_curtailed_kwh",
          "generator_kwh",
          "generator_hours",
          "generator_starts");

  private MonthsCsv() {}

  static String text(StudyResult result) {
    var out = new StringBuilder();
    var months = result.outcome().months();
    out.append(String.join(",", headers(months.get(0).figures()))).append('\n');
    for (MonthBooks m : months) {
      Figures f = m.figures();
      out.append(m.year()).append('-').append(m.month() < 10 ? "0" : "").append(m.month());
      out.append(',').append(f.days());
      for (double wh : kwhColumns(f)) {
        out.append(',').append(thousandths(wh));
      }
      out.append(',').append(f.unmetHours()).append(',').append(f.unmetDays());
      out.append(',').append(thousandths(f.equivalentFullCycles() * 1000.0));
      if (f.beyond() != Beyond.NONE) {
        beyond(f.beyond(), out);
      }
      for (Named loss : f.lossesWh()) {
        out.append(',').append(thousandths(loss.wh()));
      }
      out.append('\n');
    }
    return out.toString();
  }

  private static void beyond(Beyond b, StringBuilder out) {
    double[] wh = {
      b.unmetCutOffWh(),
      b.unmetSlowWh(),
      b.unmetAsleepWh(),
      b.shedWh(),
      b.putOffWh(),
      b.madeUpWh(),
      b.curtailedAbsorptionWh(),
      b.otherUsedWh(),
      b.otherCurtailedWh(),
      b.generatorWh()
    };
    for (double x : wh) {
      out.append(',').append(thousandths(x));
    }
    out.append(',').append(b.generatorHours()).append(',').append(b.generatorStarts());
  }

  static List<String> headers(Figures f) {
    var headers =
        new ArrayList<String>(
            List.of(
                "month",
                "days",
                "load_kwh",
                "served_kwh",
                "unmet_kwh",
                "unmet_empty_kwh",
                "unmet_rate_kwh",
                "unmet_inverter_kwh",
                "solar_nominal_kwh",
                "solar_available_kwh",
                "clipped_kwh",
                "curtailed_kwh",
                "solar_used_kwh",
                "bank_in_kwh",
                "bank_out_kwh",
                "standing_kwh",
                "start_charge_kwh",
                "end_charge_kwh",
                "lowest_charge_kwh",
                "unmet_hours",
                "unmet_days",
                "equivalent_full_cycles"));
    if (f.beyond() != Beyond.NONE) {
      headers.addAll(BEYOND);
    }
    for (Named loss : f.lossesWh()) {
      headers.add(loss.name() + "_loss_kwh");
    }
    return headers;
  }

  private static double[] kwhColumns(Figures f) {
    return new double[] {
      f.loadWh(),
      f.servedWh(),
      f.unmetWh(),
      f.unmetEmptyWh(),
      f.unmetRateWh(),
      f.unmetInverterWh(),
      f.solarNominalWh(),
      f.solarAvailableWh(),
      f.clippedWh(),
      f.curtailedWh(),
      f.solarUsedWh(),
      f.bankInWh(),
      f.bankOutWh(),
      f.standingWh(),
      f.startChargeWh(),
      f.endChargeWh(),
      f.lowestChargeWh()
    };
  }

  /** Wh as kWh with three decimals. */
  private static String thousandths(double wh) {
    long whole = Math.round(Math.abs(wh));
    String part = Long.toString(whole % 1000 + 1000).substring(1);
    return (wh < 0.0 && whole != 0 ? "-" : "") + whole / 1000 + "." + part;
  }
}
