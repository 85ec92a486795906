package greyspell.balance;

import greyspell.load.step.LoadRules;
import greyspell.power.step.InverterLimits;

/**
 * What of the demand runs in an hour: what an inverter asleep does not see, what is let go, what is
 * put off and what is made up for.
 *
 * <pre>
 * asleep               nothing at the sockets runs; it was asked for and is not met
 * s below shed should  what should run is let go
 * s below shed wait    what can wait is let go; nothing is made up for
 * s below wait         what can wait, and what was put off after it, runs on what sun and second
 *                      source leave over, the rest is put off; DC comes before AC
 * otherwise            what can wait runs, and what was put off after it, up to its own power
 * </pre>
 *
 * With a wait level, what can wait at the sockets is also put off where the inverter has no room
 * for it. What is left over is reckoned with the wires at the stated voltage, and the AC that it
 * carries with the inverter's slope at the far end, so that a little less runs than could.
 *
 * <p>At the first hour of a day, what has waited too long is let go. s is the charge as a share of
 * the window at the start of the hour.
 */
final class Demand {
  double acWh;
  double dcWh;
  double asleepWh;
  double shedWh;
  double putOffWh;
  double madeUpWh;

  private final Forcing forcing;
  private final InverterLimits inverter;
  private final LoadRules rules;
  private final Backlog ac;
  private final Backlog dc;
  // the forcing's columns, which every hour asks for
  private final double[] acAskedWh;
  private final double[] dcAskedWh;
  private final double[] acShouldRunWh;
  private final double[] acCanWaitWh;
  private final double[] dcShouldRunWh;
  private final double[] dcCanWaitWh;
  private final boolean[] asleepHours;

  Demand(Forcing forcing, InverterLimits inverter, LoadRules rules) {
    this.forcing = forcing;
    this.inverter = inverter;
    this.rules = rules;
    ac = new Backlog(rules.longestWaitD());
    dc = new Backlog(rules.longestWaitD());
    acAskedWh = forcing.acAskedWh();
    dcAskedWh = forcing.dcAskedWh();
    acShouldRunWh = forcing.acShouldRunWh();
    acCanWaitWh = forcing.acCanWaitWh();
    dcShouldRunWh = forcing.dcShouldRunWh();
    dcCanWaitWh = forcing.dcCanWaitWh();
    asleepHours = forcing.asleep();
  }

  static int remembered(LoadRules rules) {
    return 2 * (rules.longestWaitD() + 1);
  }

  /** What waits, by the day on which it was put off. */
  void remember(double[] into, int at) {
    ac.remember(into, at);
    dc.remember(into, at + remembered(rules) / 2);
  }

  double waitingWh() {
    return ac.sumWh() + dc.sumWh();
  }

  void settle(int h, double share, double supplyWh) {
    double acShould = Forcing.at(acShouldRunWh, h);
    double acWait = Forcing.at(acCanWaitWh, h);
    double dcShould = Forcing.at(dcShouldRunWh, h);
    double dcWait = Forcing.at(dcCanWaitWh, h);
    acWh = acAskedWh[h] - acShould - acWait;
    dcWh = dcAskedWh[h] - dcShould - dcWait;
    asleepWh = shedWh = putOffWh = madeUpWh = 0.0;
    if (h % 24 == 0) {
      shedWh = ac.nextDay() + dc.nextDay();
    }
    boolean asleep = asleepHours.length > 0 && asleepHours[h];
    if (asleep) {
      asleepWh = acWh + acShould + acWait;
      acWh = acShould = acWait = 0.0;
    }
    if (share < rules.shedShouldRunBelowShare()) {
      shedWh += acShould + dcShould;
    } else {
      acWh += acShould;
      dcWh += dcShould;
    }
    if (share < rules.shedCanWaitBelowShare()) {
      shedWh += acWait + dcWait;
    } else if (rules.waitBelowShare() <= 0.0) {
      acWh += acWait;
      dcWh += dcWait;
    } else {
      runWhatCanWait(h, share, supplyWh, acWait, dcWait, asleep);
    }
  }

  private void runWhatCanWait(
      int h, double share, double supplyWh, double acWait, double dcWait, boolean asleep) {
    double acMost = least(acWait + ac.sumWh(), Math.max(rules.mostAcWh(), acWait));
    acMost = asleep ? 0.0 : least(acMost, Math.max(0.0, inverter.continuousW() - acWh));
    double dcMost = least(dcWait + dc.sumWh(), Math.max(rules.mostDcWh(), dcWait));
    if (share < rules.waitBelowShare()) {
      double spareWh =
          Math.max(
              0.0,
              supplyWh
                  - forcing.standingWh()[h]
                  - dcWh
                  - inverter.busWh(least(acWh, inverter.continuousW())));
      dcMost = least(dcMost, spareWh);
      // the steepest point of the inverter's curve on the way, so that no more than the spare is
      // asked
      acMost = least(acMost, (spareWh - dcMost) / inverter.busPerWh(acWh + acMost));
    }
    run(ac, acWait, acMost);
    run(dc, dcWait, dcMost);
    acWh += acMost;
    dcWh += dcMost;
  }

  private void run(Backlog backlog, double askedWh, double runsWh) {
    if (runsWh >= askedWh) {
      double lateWh = runsWh - askedWh;
      backlog.takeWh(lateWh);
      madeUpWh += lateWh;
    } else {
      backlog.addWh(askedWh - runsWh);
      putOffWh += askedWh - runsWh;
    }
  }

  private static double least(double a, double b) {
    return a < b ? a : b;
  }
}
