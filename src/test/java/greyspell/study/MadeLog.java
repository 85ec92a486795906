package greyspell.study;

import greyspell.balance.Balance;
import greyspell.balance.Design;
import greyspell.balance.Forcing;
import greyspell.balance.Ledger;
import greyspell.balance.LedgerColumn;
import greyspell.calendar.HourCalendar;
import greyspell.load.LoadPlan;
import greyspell.scenario.Scenario;
import greyspell.storage.BankSpec;
import greyspell.weather.WeatherSeries;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Locale;
import java.util.Random;

/**
 * Writes the log that a monitor would have written in a home with a hidden fault: the home is
 * simulated with it, days and hours that differ by chance, light that is not quite that of the
 * weather file, and meters that are not quite right.
 */
final class MadeLog {
  LogChange fault = LogChange.NONE;
  LocalDate from = LocalDate.of(2022, 9, 20);
  int days = 56;
  int stepMinutes = 15;
  double lightNoiseShare = 0.1;
  double dayVariationShare = 0.15;
  double hourVariationShare = 0.25;
  double meterGainShare = 0.01;
  double meterNoiseShare = 0.03;
  double chargeNoiseShare = 0.003;
  double chargeStepShare = 0.005;
  double driftPerDayShare = 0.001;
  double chargeOffShare;
  double clockShiftH;
  double startShare = 0.7;
  int gaps = 5;
  boolean isLoadWritten = true;
  boolean isSolarWritten = true;

  /** Whether the home's generator runs by its rules, and the log has a column of it. */
  boolean hasGenerator;

  private final Scenario home;
  private final WeatherSeries weather;

  MadeLog(Scenario home, WeatherSeries weather) {
    this.home = home;
    this.weather = weather;
  }

  /** How many hours of the truth were curtailed, for the tests to know. */
  int curtailedHours;

  int generatorHours;

  String text(long seed) {
    var random = new Random(seed);
    LoadPlan plan = home.load();
    var varied =
        new LoadPlan(
            plan.appliances(),
            plan.log(),
            dayVariationShare,
            hourVariationShare,
            plan.growthFraction(),
            plan.policy());
    Scenario truth = with(home, varied, seed);
    HomeLight light = HomeLight.of(truth, weather);
    HomeRun run = HomeRun.of(truth, light, Without.NOTHING, new ArrayList<>(), new ArrayList<>());
    HourCalendar calendar = weather.calendar();
    int first = calendar.hourOf(from.getYear(), from.getMonthValue(), from.getDayOfMonth(), 0);
    double[] direct =
        Arrays.copyOfRange(LogWeeks.directShare(truth, light), first, first + 24 * days);
    var trial =
        new LogRun(
            truth,
            run,
            light,
            first,
            direct,
            new double[24 * days],
            startShare,
            new double[24 * days],
            greyspell.weather.MonitorLog.LoadAt.SOCKETS);
    Forcing forcing = trial.forcing(fault);
    for (int h = 0; h < 24 * days; h++) {
      double noise = Math.exp(lightNoiseShare * random.nextGaussian());
      forcing.solarBusWh()[h] *= noise;
    }
    BankSpec bank = truth.bank().withHealth(truth.bank().healthShare() * fault.bankFactor());
    Design design = trial.design(bank, fault);
    if (hasGenerator) {
      Design whole =
          new HomeDesign(truth.withBank(bank), Without.NOTHING).make(weather, new ArrayList<>());
      design = new Design(design.bank(), design.inverter(), whole.detail());
    }
    Ledger ledger = Ledger.of(forcing, design);
    Balance.run(forcing, design, bank.aboveReserveWh(startShare), ledger);
    return write(ledger, forcing, bank, random);
  }

  private String write(Ledger ledger, Forcing forcing, BankSpec bank, Random random) {
    double solarGain = 1.0 + meterGainShare * random.nextGaussian();
    double loadGain = 1.0 + meterGainShare * random.nextGaussian();
    double[] used = LedgerColumn.SOLAR_USED.of(ledger);
    var isGap = new boolean[24 * days];
    for (int g = 0; g < gaps; g++) {
      int at = random.nextInt(24 * days - 40);
      Arrays.fill(isGap, at, at + 2 + random.nextInt(28), true);
    }
    var out = new StringBuilder("# invented\nlocal_end,charge_pct");
    out.append(isSolarWritten ? ",solar_w" : "").append(isLoadWritten ? ",load_w" : "");
    out.append(hasGenerator ? ",generator_w\n" : "\n");
    double[] served = LedgerColumn.SERVED.of(ledger);
    double off = 0.0;
    double before = startShare;
    for (int h = 0; h < 24 * days; h++) {
      double end = bank.monitorShare(ledger.chargeWh()[h]);
      off = end > 0.995 ? 0.0 : off + driftPerDayShare / 24.0;
      double servedShare = served[h] / Math.max(1e-9, ledger.askedWh(h));
      double load = forcing.acAskedWh()[h] * servedShare;
      generatorHours += ledger.isGeneratorOn(h) ? 1 : 0;
      curtailedHours += forcing.solarBusWh()[h] > used[h] + 1.0 ? 1 : 0;
      int rows = 60 / stepMinutes;
      for (int r = 1; r <= rows; r++) {
        LocalDateTime at =
            from.atStartOfDay()
                .plusMinutes(h * 60L + (long) r * stepMinutes - Math.round(clockShiftH * 60.0));
        double charge = before + (end - before) * r / rows + off + chargeOffShare;
        charge += chargeNoiseShare * random.nextGaussian();
        charge = Math.rint(charge / chargeStepShare) * chargeStepShare;
        double solar = used[h] * solarGain * (1.0 + meterNoiseShare * random.nextGaussian());
        double loadW = load * loadGain * (1.0 + meterNoiseShare * random.nextGaussian());
        if (isGap[h]) {
          continue;
        }
        out.append(at).append(',');
        out.append(
            String.format(Locale.ROOT, "%.1f", 100.0 * Math.min(1.0, Math.max(0.0, charge))));
        if (isSolarWritten) {
          out.append(',').append(Math.round(Math.max(0.0, solar)));
        }
        if (isLoadWritten) {
          out.append(',').append(Math.round(loadW));
        }
        if (hasGenerator) {
          out.append(',').append(Math.round(ledger.generatorWh(h)));
        }
        out.append('\n');
      }
      before = end;
    }
    return out.toString();
  }

  private static Scenario with(Scenario s, LoadPlan plan, long seed) {
    return new Scenario(
        s.file(),
        s.name(),
        s.note(),
        s.site(),
        s.weather(),
        s.sky(),
        s.arrays(),
        s.controller(),
        s.bank(),
        s.inverter(),
        plan,
        s.startChargeFraction(),
        s.costs(),
        s.electrical(),
        s.generator(),
        s.otherSource(),
        seed,
        s.assumptions(),
        s.cautions());
  }
}
