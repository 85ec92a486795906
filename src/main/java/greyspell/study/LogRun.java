package greyspell.study;

import greyspell.balance.Balance;
import greyspell.balance.Design;
import greyspell.balance.Detail;
import greyspell.balance.Forcing;
import greyspell.balance.Ledger;
import greyspell.balance.NamedHours;
import greyspell.cause.log.Shade;
import greyspell.power.Charger;
import greyspell.scenario.Scenario;
import greyspell.storage.BankSpec;
import greyspell.storage.step.BankLimits;
import greyspell.weather.MonitorLog.LoadAt;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Runs the home through the hours of a log, from the charge that the log begins with, with
 * something changed. A generator is not started by rule: what the log saw of it is fed in.
 */
final class LogRun {
  static final double USUAL_CHARGER_EFFICIENCY = 0.9; // common practice, no source

  private final Scenario home;
  private final HomeRun run;
  private final HomeLight light;
  private final int from;
  private final int hours;
  private final double[] directShare;
  private final double[] generatorWh;
  private final double startShare;
  private final double[] loadWh;
  private final LoadAt loadAt;

  /**
   * Of a span of the weather.
   *
   * @param from its first hour
   * @param directShare of the light, by hour of the span
   * @param generatorWh at its own terminals, NaN where not known
   * @param startShare of the bank's content
   * @param loadWh as the log has seen it; NaN where it has not, or where the lights were out
   * @param loadAt where it was measured
   */
  LogRun(
      Scenario home,
      HomeRun run,
      HomeLight light,
      int from,
      double[] directShare,
      double[] generatorWh,
      double startShare,
      double[] loadWh,
      LoadAt loadAt) {
    this.home = home;
    this.run = run;
    this.light = light;
    this.from = from;
    hours = directShare.length;
    this.directShare = directShare;
    this.generatorWh = generatorWh;
    this.startShare = startShare;
    this.loadWh = loadWh;
    this.loadAt = loadAt;
  }

  /**
   * What came of it.
   *
   * @param bank as it was run
   */
  record Books(Ledger ledger, BankSpec bank) {
    /** As a monitor shows it, at the end of an hour of the span. */
    double chargeShare(int hour) {
      return bank.monitorShare(ledger.chargeWh()[hour]);
    }
  }

  Books with(LogChange change) {
    BankSpec bank =
        home.bank()
            .withHealth(
                Math.max(0.05, Math.min(1.5, home.bank().healthShare() * change.bankFactor())));
    Forcing forcing = forcing(change);
    Design design = design(bank, change);
    Ledger ledger = Ledger.of(forcing, design);
    double windowWh = design.bank().windowWh();
    double startWh = bank.aboveReserveWh(startShare);
    Balance.run(forcing, design, Math.max(0.0, Math.min(windowWh, startWh)), ledger);
    return new Books(ledger, bank);
  }

  Design design(BankSpec bank, LogChange change) {
    Design design =
        new HomeDesign(home.withBank(bank), Without.NOTHING)
            .make(light.weather(), new ArrayList<>());
    BankLimits limits = design.bank();
    return new Design(
        new BankLimits(
            limits.windowWh(),
            Math.min(1.0, limits.chargeEfficiency() * change.chargingFactor()),
            limits.dischargeEfficiency(),
            limits.mostInWh(),
            limits.mostOutWh(),
            limits.keptPerHourShare()),
        design.inverter(),
        new Detail(design.detail().bank(), null, design.detail().rules()));
  }

  Forcing forcing(LogChange change) {
    Forcing.Columns all = run.forcing().columns();
    var c = new Forcing.Columns();
    c.solarNominalWh = cut(all.solarNominalWh);
    c.solarAvailableWh = cut(all.solarAvailableWh);
    c.clippedWh = cut(all.clippedWh);
    c.controllerLossWh = cut(all.controllerLossWh);
    c.solarBusWh = cut(all.solarBusWh);
    c.acAskedWh = asked(all.acAskedWh, change);
    c.dcAskedWh = asked(all.dcAskedWh, change);
    c.acShouldRunWh = asked(all.acShouldRunWh, change);
    c.acCanWaitWh = asked(all.acCanWaitWh, change);
    c.dcShouldRunWh = asked(all.dcShouldRunWh, change);
    c.dcCanWaitWh = asked(all.dcCanWaitWh, change);
    c.standingWh = cut(all.standingWh);
    c.bankTemperatureC = cut(all.bankTemperatureC);
    c.lockedShare = cut(all.lockedShare);
    c.chargeShare = cut(all.chargeShare);
    c.resistanceFactor = cut(all.resistanceFactor);
    c.otherBusWh = cut(all.otherBusWh);
    c.asleep =
        all.asleep.length == 0 ? all.asleep : Arrays.copyOfRange(all.asleep, from, from + hours);
    c.arrayLosses = cut(all.arrayLosses);
    c.standingParts = cut(all.standingParts);
    c.controllerParts = cut(all.controllerParts);
    change(c, change);
    return new Forcing(run.forcing().calendar(), c);
  }

  private void change(Forcing.Columns c, LogChange change) {
    Shade shade = change.shade();
    boolean isLoadOnBus = loadAt == LoadAt.BUS;
    long firstHourOfDay = from % 24;
    for (int h = 0; h < hours; h++) {
      double factor = change.arrayFactor();
      int k = (int) ((firstHourOfDay + h) % 24);
      if (shade != null && k >= shade.fromHour() && k < shade.toHour()) {
        factor *= Math.max(0.0, 1.0 - shade.lostShare().value() * directShare[h]);
      }
      c.solarBusWh[h] *= factor;
      c.controllerLossWh[h] *= factor;
      c.solarAvailableWh[h] *= factor;
      c.clippedWh[h] *= factor;
      double standingFactor = change.drawFactor() * (isLoadOnBus ? change.loadFactor() : 1.0);
      c.standingWh[h] =
          Math.max(
              0.0,
              c.standingWh[h] * standingFactor
                  + change.standbyW()
                  + (isLoadOnBus ? change.alwaysOnLoadW() : 0.0));
      if (!isLoadOnBus) {
        c.acAskedWh[h] = Math.max(0.0, c.acAskedWh[h] + change.alwaysOnLoadW());
      }
    }
    if (change.isLoadAsSeen()) {
      takeSeenLoad(c);
    }
    addGenerator(c);
  }

  private void takeSeenLoad(Forcing.Columns c) {
    for (int h = 0; h < hours; h++) {
      double seenWh = loadWh[h];
      if (Double.isNaN(seenWh)) {
        continue;
      }
      double dcWh =
          switch (loadAt) {
            case SOCKETS -> c.dcAskedWh[h];
            case HOUSE -> Math.min(c.dcAskedWh[h], seenWh);
            case BUS -> seenWh;
          };
      double acWh =
          switch (loadAt) {
            case SOCKETS -> seenWh;
            case HOUSE -> seenWh - dcWh;
            case BUS -> 0.0;
          };
      scale(c.acAskedWh, h, acWh, c.acShouldRunWh, c.acCanWaitWh);
      scale(c.dcAskedWh, h, dcWh, c.dcShouldRunWh, c.dcCanWaitWh);
      c.standingWh[h] = loadAt == LoadAt.BUS ? 0.0 : c.standingWh[h];
    }
  }

  /** The whole to what was seen, its classes along with it. */
  private static void scale(double[] askedWh, int h, double toWh, double[]... classesWh) {
    double factor = askedWh[h] > 0.0 ? toWh / askedWh[h] : 0.0;
    for (double[] wh : classesWh) {
      if (wh.length > 0) {
        wh[h] *= factor;
      }
    }
    askedWh[h] = toWh;
  }

  private void addGenerator(Forcing.Columns c) {
    Charger charger = charger(home);
    double efficiency = charger == null ? USUAL_CHARGER_EFFICIENCY : charger.efficiency();
    boolean isAny = Arrays.stream(generatorWh).anyMatch(wh -> wh > 0.0);
    if (isAny && c.otherBusWh.length == 0) {
      c.otherBusWh = new double[hours];
    }
    for (int h = 0; h < hours && isAny; h++) {
      c.otherBusWh[h] += generatorWh[h] > 0.0 ? efficiency * generatorWh[h] : 0.0;
    }
  }

  /** The generator's own, else the inverter's; null where neither is stated. */
  static @Nullable Charger charger(Scenario home) {
    Scenario.Generator generator = home.generator();
    return generator == null ? home.inverter().charger() : generator.rules().charger();
  }

  private double[] asked(double[] wh, LogChange change) {
    double[] cut = cut(wh);
    for (int h = 0; h < cut.length; h++) {
      cut[h] *= change.loadFactor() * change.drawFactor();
    }
    return cut;
  }

  private double[] cut(double[] values) {
    return values.length == 0 ? values : Arrays.copyOfRange(values, from, from + hours);
  }

  private List<NamedHours> cut(List<NamedHours> parts) {
    var cut = new ArrayList<NamedHours>();
    for (NamedHours part : parts) {
      cut.add(new NamedHours(part.name(), cut(part.wh())));
    }
    return cut;
  }
}
