package greyspell.balance;

import greyspell.calendar.HourCalendar;
import greyspell.load.step.LoadRules;
import greyspell.power.step.GeneratorLimits;
import greyspell.power.step.InverterLimits;
import greyspell.storage.step.BankDetail;
import greyspell.storage.step.BankLimits;
import greyspell.storage.step.CellStep;
import greyspell.storage.step.Taper;
import greyspell.storage.step.TwoTank;
import java.util.Arrays;
import java.util.Random;

/** Small forcings and designs for tests: hand-written days, and random ones from a seed. */
public final class Houses {
  private Houses() {}

  /** A forcing from plain numbers; controller, standing and cold play no part. */
  public static Forcing plain(double[] solarWh, double[] loadWh) {
    var columns = columns(solarWh.length);
    columns.solarBusWh = solarWh;
    columns.solarAvailableWh = solarWh;
    columns.solarNominalWh = solarWh;
    columns.acAskedWh = loadWh;
    return new Forcing(HourCalendar.typicalYear(), columns);
  }

  /** A bank with one efficiency each way, no limits, no self-discharge. */
  public static BankLimits bank(double windowWh, double etaIn, double etaOut) {
    return new BankLimits(windowWh, etaIn, etaOut, 1e12, 1e12, 1.0);
  }

  public static InverterLimits perfectInverter() {
    return new InverterLimits(1e12, 0.0, 0.0);
  }

  public static Design perfect(double windowWh, double etaIn, double etaOut) {
    return new Design(bank(windowWh, etaIn, etaOut), perfectInverter());
  }

  static Forcing.Columns columns(int hours) {
    var columns = new Forcing.Columns();
    columns.clippedWh = new double[hours];
    columns.controllerLossWh = new double[hours];
    columns.dcAskedWh = new double[hours];
    columns.standingWh = new double[hours];
    columns.bankTemperatureC = new double[hours];
    columns.lockedShare = new double[hours];
    columns.chargeShare = new double[hours];
    Arrays.fill(columns.chargeShare, 1.0);
    return columns;
  }

  /**
   * Days of random sun, load, standby, cold hours, clipping: nothing is realistic, everything
   * happens.
   */
  public static Forcing random(long seed, int days) {
    var random = new Random(seed);
    int hours = days * 24;
    var columns = columns(hours);
    columns.solarBusWh = new double[hours];
    columns.solarAvailableWh = new double[hours];
    columns.acAskedWh = new double[hours];
    double sunW = random.nextDouble() * 6000.0, loadW = random.nextDouble() * 900.0;
    double grey = 1.0, cold = random.nextDouble();
    for (int h = 0; h < hours; h++) {
      int hourOfDay = h % 24;
      if (hourOfDay == 0) {
        grey = random.nextDouble() < 0.4 ? random.nextDouble() * 0.15 : random.nextDouble();
      }
      double sun = Math.max(0.0, Math.sin(Math.PI * (hourOfDay - 7) / 10.0)) * sunW * grey;
      columns.solarBusWh[h] = hourOfDay > 7 && hourOfDay < 17 ? sun : 0.0;
      columns.controllerLossWh[h] = columns.solarBusWh[h] * 0.04;
      columns.clippedWh[h] = columns.solarBusWh[h] > 3000.0 ? random.nextDouble() * 200.0 : 0.0;
      columns.solarAvailableWh[h] =
          columns.solarBusWh[h] + columns.controllerLossWh[h] + columns.clippedWh[h];
      columns.acAskedWh[h] = random.nextInt(8) == 0 ? 0.0 : random.nextDouble() * 2.0 * loadW;
      columns.dcAskedWh[h] = random.nextDouble() * 30.0;
      columns.standingWh[h] = random.nextDouble() * 60.0;
      columns.lockedShare[h] = random.nextDouble() < cold ? random.nextDouble() * 0.5 : 0.0;
      columns.chargeShare[h] = random.nextDouble() < cold * 0.3 ? 0.0 : 1.0;
    }
    columns.solarNominalWh = columns.solarAvailableWh;
    return new Forcing(HourCalendar.of(2001, 1), columns);
  }

  public static Design randomDesign(long seed) {
    var random = new Random(seed ^ 0x5DEECE66DL);
    double windowWh = random.nextInt(10) == 0 ? 0.0 : random.nextDouble() * 30_000.0;
    return new Design(
        new BankLimits(
            windowWh,
            0.7 + 0.3 * random.nextDouble(),
            0.7 + 0.3 * random.nextDouble(),
            random.nextBoolean() ? 1e9 : random.nextDouble() * 3000.0,
            random.nextBoolean() ? 1e9 : random.nextDouble() * 2000.0,
            1.0 - 1e-4 * random.nextDouble()),
        new InverterLimits(
            200.0 + random.nextDouble() * 3000.0,
            0.08 * random.nextDouble(),
            0.05 * random.nextDouble(),
            2e-5 * random.nextDouble()));
  }

  /** A random house with loads of every class, a second source, and hours asleep. */
  static Forcing randomFull(long seed, int days) {
    Forcing plain = random(seed, days);
    var random = new Random(seed + 77);
    var columns = copy(plain);
    int hours = plain.hours();
    columns.acShouldRunWh = part(random, plain.acAskedWh(), 0.4);
    columns.acCanWaitWh = part(random, plain.acAskedWh(), 0.4);
    columns.dcShouldRunWh = part(random, plain.dcAskedWh(), 0.4);
    columns.dcCanWaitWh = part(random, plain.dcAskedWh(), 0.4);
    if (random.nextBoolean()) {
      columns.otherBusWh = new double[hours];
      for (int h = 0; h < hours; h++) {
        columns.otherBusWh[h] = random.nextInt(3) == 0 ? random.nextDouble() * 900.0 : 0.0;
      }
    }
    if (random.nextBoolean()) {
      columns.asleep = new boolean[hours];
      for (int h = 0; h < hours; h++) {
        columns.asleep[h] = random.nextInt(4) == 0;
      }
    }
    if (random.nextInt(4) > 0) {
      columns.resistanceFactor = new double[hours];
      for (int h = 0; h < hours; h++) {
        columns.resistanceFactor[h] = 0.9 + random.nextDouble();
      }
    }
    return new Forcing(plain.calendar(), columns);
  }

  /** A random design in which every part may be there or missing. */
  static Design randomFullDesign(long seed, int hours) {
    Design plain = randomDesign(seed);
    var random = new Random(seed + 99);
    BankLimits bank = plain.bank();
    BankDetail detail = null;
    if (random.nextInt(5) > 0) {
      double reserveWh = random.nextDouble() * bank.windowWh();
      double fullShare = random.nextBoolean() ? 1.0 : 0.8 + 0.2 * random.nextDouble();
      double contentWh = (reserveWh + bank.windowWh()) / fullShare;
      detail =
          new BankDetail(
              reserveWh,
              contentWh,
              48.0,
              random.nextBoolean() ? randomCells(random, contentWh) : null,
              random.nextBoolean()
                  ? TwoTank.of(0.2 + 0.6 * random.nextDouble(), 0.05 + random.nextDouble())
                  : null,
              random.nextBoolean()
                  ? new Taper(
                      0.5 + 0.45 * random.nextDouble(), 0.02 + 0.1 * random.nextDouble(), fullShare)
                  : null);
    }
    GeneratorLimits generator = random.nextBoolean() ? randomGenerator(random, hours) : null;
    LoadRules rules =
        random.nextInt(4) == 0
            ? LoadRules.NONE
            : new LoadRules(
                random.nextBoolean() ? 0.5 * random.nextDouble() : 0.0,
                random.nextBoolean() ? 0.5 * random.nextDouble() : 0.0,
                random.nextBoolean() ? random.nextDouble() : 0.0,
                random.nextInt(5),
                random.nextDouble() * 2000.0,
                random.nextDouble() * 50.0);
    return new Design(bank, plain.inverter(), new Detail(detail, generator, rules));
  }

  private static CellStep randomCells(Random random, double contentWh) {
    var openCircuitV = new double[5];
    openCircuitV[0] = 44.0 + 4.0 * random.nextDouble();
    for (int k = 1; k < 5; k++) {
      openCircuitV[k] = openCircuitV[k - 1] + 2.0 * random.nextDouble();
    }
    var cells =
        new CellStep(
            openCircuitV,
            1e-4 + random.nextDouble() * 300.0 / (contentWh + 1.0),
            0.9 + 0.1 * random.nextDouble(),
            random.nextBoolean() ? 56.0 : 1e6,
            random.nextBoolean() ? 46.0 : 0.0);
    return random.nextInt(3) == 0
        ? cells.withStated(0.9 + 0.1 * random.nextDouble(), 0.9 + 0.1 * random.nextDouble())
        : cells;
  }

  private static GeneratorLimits randomGenerator(Random random, int hours) {
    var mostW = new double[hours];
    var permitted = new boolean[hours];
    double ratedW = random.nextDouble() * 4000.0;
    boolean always = random.nextInt(3) == 0;
    for (int h = 0; h < hours; h++) {
      mostW[h] = ratedW * (0.8 + 0.2 * random.nextDouble());
      permitted[h] = always || (h % 24 > 7 && random.nextInt(10) > 0);
    }
    // at 0 it starts only when the bank is short
    double start = random.nextInt(3) == 0 ? 0.0 : random.nextDouble() * 0.6;
    return new GeneratorLimits(
        mostW,
        permitted,
        random.nextDouble() * 3000.0,
        0.8 + 0.2 * random.nextDouble(),
        start,
        start + random.nextDouble() * 0.6,
        1 + random.nextInt(4));
  }

  private static double[] part(Random random, double[] wh, double most) {
    if (random.nextInt(3) == 0) {
      return new double[0];
    }
    var part = new double[wh.length];
    for (int h = 0; h < wh.length; h++) {
      part[h] = wh[h] * most * random.nextDouble();
    }
    return part;
  }

  static Forcing.Columns copy(Forcing f) {
    var columns = columns(f.hours());
    columns.solarNominalWh = f.solarNominalWh();
    columns.solarAvailableWh = f.solarAvailableWh();
    columns.clippedWh = f.clippedWh();
    columns.controllerLossWh = f.controllerLossWh();
    columns.solarBusWh = f.solarBusWh();
    columns.acAskedWh = f.acAskedWh();
    columns.dcAskedWh = f.dcAskedWh();
    columns.standingWh = f.standingWh();
    columns.lockedShare = f.lockedShare();
    columns.chargeShare = f.chargeShare();
    return columns;
  }
}
