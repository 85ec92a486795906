package greyspell.balance;

import greyspell.load.step.LoadRules;
import greyspell.power.step.GeneratorLimits;
import greyspell.power.step.InverterLimits;
import greyspell.storage.step.BankDetail;
import greyspell.storage.step.BankLimits;
import greyspell.storage.step.CellStep;
import greyspell.storage.step.Taper;
import greyspell.storage.step.TwoTank;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The slow, obvious form of {@link FullLoop}, written from its Javadoc and not from its code: one
 * hour at a time, named steps, min and max, lists and maps. Currents are found by halving an
 * interval, tanks and taper by their own solutions of the printed equations.
 */
final class PlainFullBalance {
  /** Energy that waits, with the number of midnights it has seen. */
  private static final class Waiting {
    double wh;
    int midnights;

    Waiting(double wh) {
      this.wh = wh;
    }
  }

  private static final int HALVINGS = 120;

  /** What the ledger should say of the last hour, by its column's name in lower case. */
  final Map<String, Double> books = new LinkedHashMap<>();

  double bankV;
  boolean isGeneratorOn;

  /** What has happened so far of all that the books do not tell. */
  final Set<Happening> happened = EnumSet.noneOf(Happening.class);

  /** Ways through the hour that end in the same books. */
  enum Happening {
    STATED_LOSS_OUT,
    STATED_LOSS_IN,
    RESISTANCE_LOSS_OUT,
    RESISTANCE_LOSS_IN,
    WARM_OR_COLD_RESISTANCE,
    TAPER_MET_WITHIN_THE_HOUR,
    TAPER_FROM_THE_START_OF_THE_HOUR,
    CHARGING_ENDED_BELOW_THE_TOP,
    STARTED_BECAUSE_LOW,
    STARTED_BECAUSE_LOW_AFTER,
    STARTED_BECAUSE_SHORT_ONLY
  }

  private final Forcing forcing;
  private final BankLimits bank;
  private final InverterLimits inverter;
  private final LoadRules rules;
  private final @Nullable GeneratorLimits generator;
  private final @Nullable CellStep cells;
  private final @Nullable TwoTank tanks;
  private final @Nullable Taper taper;
  private final double nominalV;
  private final double reserveWh;
  private final double wholeWh;
  private final List<Waiting> acWaiting = new ArrayList<>();
  private final List<Waiting> dcWaiting = new ArrayList<>();

  private double chargeWh;
  private double availableWh;
  private int generatorHours;
  private double ocV;
  private double ohm;

  PlainFullBalance(Forcing forcing, Design design, double startChargeWh) {
    this.forcing = forcing;
    bank = design.bank();
    inverter = design.inverter();
    rules = design.detail().rules();
    generator = design.detail().generator();
    BankDetail detail = design.detail().bank();
    cells = detail == null ? null : detail.cells();
    tanks = detail == null ? null : detail.tanks();
    taper = detail == null ? null : detail.taper();
    reserveWh = detail == null ? 0.0 : detail.reserveWh();
    wholeWh = detail == null ? bank.windowWh() : detail.contentWh();
    nominalV = detail == null ? 0.0 : detail.nominalV();
    chargeWh = startChargeWh;
    availableWh = tanks == null ? 0.0 : tanks.availableShare() * (reserveWh + chargeWh);
  }

  /**
   * Goes on from this charge. Near the cut-off an hour's draw answers to the hour's first voltage
   * and overshoots, so that a last bit of the charge would grow from hour to hour.
   */
  void goOnFrom(double wh) {
    chargeWh = wh;
  }

  void hour(int h) {
    books.clear();

    // The bank rests.
    double beforeWh = chargeWh;
    double lossWh = beforeWh * (1.0 - bank.keptPerHourShare());
    availableWh *= reserveWh + beforeWh > 0.0 ? 1.0 - lossWh / (reserveWh + beforeWh) : 1.0;
    chargeWh = beforeWh - lossWh;
    double share = windowShare(chargeWh);
    ocV = cells == null ? 0.0 : cells.openV(wholeShare());
    double[] warmth = forcing.resistanceFactor();
    ohm = cells == null ? 0.0 : cells.resistanceOhm() * (warmth.length == 0 ? 1.0 : warmth[h]);
    double wirePerWh = inverter.wireLossSharePerW();
    if (cells != null) {
      wirePerWh *= Math.pow(nominalV / ocV, 2.0);
    }

    // What runs.
    double standingWh = forcing.standingWh()[h];
    double sunWh = forcing.solarBusWh()[h];
    double otherWh = Forcing.at(forcing.otherBusWh(), h);
    double acAskedWh = forcing.acAskedWh()[h];
    double dcAskedWh = forcing.dcAskedWh()[h];
    double acShouldWh = Forcing.at(forcing.acShouldRunWh(), h);
    double dcShouldWh = Forcing.at(forcing.dcShouldRunWh(), h);
    double acCanWaitWh = Forcing.at(forcing.acCanWaitWh(), h);
    double dcCanWaitWh = Forcing.at(forcing.dcCanWaitWh(), h);
    double shedWh = 0.0;
    if (h % 24 == 0) {
      shedWh += dropTooLate(acWaiting) + dropTooLate(dcWaiting);
    }
    boolean asleep = forcing.asleep().length > 0 && forcing.asleep()[h];
    double asleepWh = 0.0;
    if (asleep) {
      asleepWh = acAskedWh;
      acAskedWh = 0.0;
      acShouldWh = 0.0;
      acCanWaitWh = 0.0;
    }
    double acWh = acAskedWh - acShouldWh - acCanWaitWh;
    double dcWh = dcAskedWh - dcShouldWh - dcCanWaitWh;
    if (isBelow(share, rules.shedShouldRunBelowShare())) {
      shedWh += acShouldWh + dcShouldWh;
    } else {
      acWh += acShouldWh;
      dcWh += dcShouldWh;
    }
    double putOffWh = 0.0;
    double madeUpWh = 0.0;
    if (isBelow(share, rules.shedCanWaitBelowShare())) {
      shedWh += acCanWaitWh + dcCanWaitWh;
    } else {
      double dcRunsWh = couldRun(dcCanWaitWh, dcWaiting, rules.mostDcWh());
      double acRunsWh = asleep ? 0.0 : couldRun(acCanWaitWh, acWaiting, rules.mostAcWh());
      if (rules.waitBelowShare() > 0.0) {
        // What would overload the inverter is put off too.
        acRunsWh = Math.min(acRunsWh, Math.max(0.0, inverter.continuousW() - acWh));
      }
      if (isBelow(share, rules.waitBelowShare())) {
        double statedWire = inverter.wireLossSharePerW(); // whatever the bank's voltage
        double mustWh = Math.min(acWh, inverter.continuousW());
        double leftWh =
            Math.max(0.0, sunWh + otherWh - standingWh - dcWh - inverterBusWh(mustWh, statedWire));
        dcRunsWh = Math.min(dcRunsWh, leftWh);
        leftWh -= dcRunsWh;
        // Each Wh is counted as if it were the last and dearest one.
        acRunsWh = Math.min(acRunsWh, leftWh / busForOneMoreWh(acWh + acRunsWh, statedWire));
      }
      acWh += acRunsWh;
      dcWh += dcRunsWh;
      putOffWh =
          putOff(acWaiting, acCanWaitWh, acRunsWh) + putOff(dcWaiting, dcCanWaitWh, dcRunsWh);
      madeUpWh =
          makeUp(acWaiting, acCanWaitWh, acRunsWh) + makeUp(dcWaiting, dcCanWaitWh, dcRunsWh);
    }

    // The generator.
    double houseWh =
        standingWh
            + dcWh
            + inverterBusWh(Math.min(acWh, inverter.continuousW()), inverter.wireLossSharePerW());
    double surplusWh = sunWh + otherWh - houseWh;
    double couldGiveWh =
        outLimits(forcing.lockedShare()[h]).values().stream().mapToDouble(w -> w).min().orElse(0.0);
    decideGenerator(h, share, roughlyAfter(surplusWh), -surplusWh > couldGiveWh);
    double generatorAcWh = 0.0;
    double chargerMostWh = 0.0;
    double chargerEfficiency = 1.0;
    if (isGeneratorOn && generator != null) {
      generatorAcWh = Math.min(acWh, generator.mostW()[h]);
      chargerEfficiency = generator.chargerEfficiency();
      chargerMostWh =
          chargerEfficiency
              * Math.min(generator.chargerMostAcW(), generator.mostW()[h] - generatorAcWh);
    }

    // The sockets, then the bus.
    double inverterAcWh = Math.min(acWh - generatorAcWh, inverter.continuousW());
    double beyondInverterWh = acWh - generatorAcWh - inverterAcWh;
    double intoInverterWh = inverterDcWh(inverterAcWh);
    double wiringWh = wirePerWh * intoInverterWh * intoInverterWh;
    double needWh = standingWh + dcWh + intoInverterWh + wiringWh;
    double directWh = Math.min(sunWh + otherWh, needWh);
    double spareWh = sunWh + otherWh - directWh;
    double chargerToHouseWh = Math.min(chargerMostWh, needWh - directWh);
    double lackWh = needWh - directWh - chargerToHouseWh;

    // The bank gives.
    Map<String, Double> outLimits = outLimits(forcing.lockedShare()[h]);
    Map<String, Double> heldBack = new LinkedHashMap<>();
    double outWh = smallest(lackWh, outLimits, heldBack);
    double drawnWh = drawnWh(outWh);

    // The bank takes.
    double offeredWh = lackWh > 0.0 ? 0.0 : spareWh + chargerMostWh - chargerToHouseWh;
    Map<String, Double> notTaken = new LinkedHashMap<>();
    double inWh = smallest(offeredWh, inLimits(offeredWh, forcing.chargeShare()[h]), notTaken);
    double storedWh = storedWh(inWh);
    double chargerToBankWh = Math.max(0.0, inWh - spareWh);
    double leftWh = spareWh - Math.min(inWh, spareWh);
    bankV = cells == null ? 0.0 : terminalV(inWh, outWh);
    chargeWh = Math.min(bank.windowWh(), Math.max(0.0, chargeWh + storedWh - drawnWh));
    if (tanks != null) {
      availableWh = availableAfterWh(tanks, storedWh - drawnWh);
    }

    noteBank(inWh, outWh);

    // The books.
    double chargerWh = chargerToHouseWh + chargerToBankWh;
    double chargerLossWh = chargerWh / chargerEfficiency - chargerWh;
    double sunLeftWh = Math.min(sunWh, leftWh);
    double usedShare = sunWh > 0.0 ? (sunWh - sunLeftWh) / sunWh : 1.0;
    double onShare = needWh > 0.0 ? (needWh - lackWh + outWh) / needWh : 1.0;
    double onBusWh = inverterAcWh + dcWh;
    double curtailedWh =
        sunLeftWh + (1.0 - usedShare) * forcing.controllerLossWh()[h]; // at the controller's input
    Map<String, Double> curtailed = split(curtailedWh, notTaken);
    Map<String, Double> unmet = split(onBusWh * (1.0 - onShare), heldBack);
    book("solar_used", sunWh - sunLeftWh);
    book("controller_loss", usedShare * forcing.controllerLossWh()[h]);
    book("curtailed_full", part(curtailed, "full"));
    book("curtailed_rate", part(curtailed, "rate"));
    book("curtailed_cold", part(curtailed, "cold"));
    book("curtailed_absorption", part(curtailed, "absorption"));
    book("other_curtailed", leftWh - sunLeftWh);
    book("generator", generatorAcWh + chargerWh + chargerLossWh);
    book("charger_loss", chargerLossWh);
    book("bank_in", inWh);
    book("bank_out", outWh);
    book("charge_loss", inWh - storedWh);
    book("discharge_loss", drawnWh - outWh);
    book("self_discharge", lossWh);
    book("standing", standingWh * onShare);
    book("inverter_loss", (intoInverterWh - inverterAcWh) * onShare);
    book("inverter_wiring", wiringWh * onShare);
    book("served", generatorAcWh + onBusWh * onShare);
    book("shed", shedWh);
    book("put_off", putOffWh);
    book("made_up", madeUpWh);
    book("unmet_empty", part(unmet, "empty"));
    book("unmet_rate", part(unmet, "rate"));
    book("unmet_inverter", beyondInverterWh);
    book("unmet_cut_off", part(unmet, "cut-off"));
    book("unmet_slow", part(unmet, "slow"));
    book("unmet_asleep", asleepWh);
    book("waiting", sum(acWaiting) + sum(dcWaiting));
    book("charge", chargeWh);
  }

  private void book(String column, double wh) {
    books.put(column, wh);
  }

  private void noteBank(double inWh, double outWh) {
    if (cells == null) {
      return;
    }
    if (outWh > 1.0) {
      happened.add(
          cells.isLossStated() ? Happening.STATED_LOSS_OUT : Happening.RESISTANCE_LOSS_OUT);
    }
    if (inWh > 1.0) {
      happened.add(cells.isLossStated() ? Happening.STATED_LOSS_IN : Happening.RESISTANCE_LOSS_IN);
    }
    if (!cells.isLossStated() && inWh + outWh > 1.0 && ohm != cells.resistanceOhm()) {
      happened.add(Happening.WARM_OR_COLD_RESISTANCE);
    }
  }

  /** A level of 0 means never. */
  private static boolean isBelow(double share, double level) {
    return level > 0.0 && share < level;
  }

  // ---- What waits

  private static double sum(List<Waiting> waiting) {
    return waiting.stream().mapToDouble(w -> w.wh).sum();
  }

  private double dropTooLate(List<Waiting> waiting) {
    waiting.forEach(w -> w.midnights++);
    double droppedWh =
        waiting.stream()
            .filter(w -> w.midnights > rules.longestWaitD())
            .mapToDouble(w -> w.wh)
            .sum();
    waiting.removeIf(w -> w.midnights > rules.longestWaitD());
    return droppedWh;
  }

  /** Of what is asked now and what waits: never less than what is asked now. */
  private static double couldRun(double askedWh, List<Waiting> waiting, double mostWh) {
    return Math.max(askedWh, Math.min(mostWh, askedWh + sum(waiting)));
  }

  private static double putOff(List<Waiting> waiting, double askedWh, double runsWh) {
    double wh = Math.max(0.0, askedWh - runsWh);
    waiting.add(new Waiting(wh));
    return wh;
  }

  /** The oldest first. */
  private static double makeUp(List<Waiting> waiting, double askedWh, double runsWh) {
    double madeUpWh = Math.max(0.0, runsWh - askedWh);
    double leftWh = madeUpWh;
    for (Waiting oldest : waiting) {
      double wh = Math.min(leftWh, oldest.wh);
      oldest.wh -= wh;
      leftWh -= wh;
    }
    return madeUpWh;
  }

  // ---- Generator and inverter

  private void decideGenerator(int h, double share, double shareAfter, boolean isShort) {
    if (generator == null) {
      return;
    }
    boolean low = share < generator.startBelowShare();
    boolean lowAfter = shareAfter < generator.startBelowShare();
    boolean high = share >= generator.stopAboveShare() && generatorHours >= generator.minimumRunH();
    if (!generator.permitted()[h]) {
      isGeneratorOn = false;
    } else if (isGeneratorOn) {
      isGeneratorOn = !high || isShort;
    } else {
      isGeneratorOn = low || lowAfter || isShort;
      if (isGeneratorOn) {
        happened.add(
            low
                ? Happening.STARTED_BECAUSE_LOW
                : lowAfter
                    ? Happening.STARTED_BECAUSE_LOW_AFTER
                    : Happening.STARTED_BECAUSE_SHORT_ONLY);
      }
    }
    generatorHours = isGeneratorOn ? generatorHours + 1 : 0;
  }

  private double roughlyAfter(double surplusWh) {
    if (bank.windowWh() <= 0.0) {
      return surplusWh < 0.0 ? -1.0 : 0.0; // without a bank any lack is below every level
    }
    return windowShare(
        surplusWh > 0.0
            ? chargeWh + surplusWh * bank.chargeEfficiency()
            : chargeWh + surplusWh / bank.dischargeEfficiency());
  }

  private double inverterDcWh(double acWh) {
    return acWh * (1.0 + inverter.linearLossShare())
        + inverter.quadraticLossShare() * acWh * acWh / inverter.continuousW();
  }

  private double inverterBusWh(double acWh, double wirePerWh) {
    double intoInverterWh = inverterDcWh(acWh);
    return intoInverterWh + wirePerWh * intoInverterWh * intoInverterWh;
  }

  private double busForOneMoreWh(double acWh, double wirePerWh) {
    double intoPerWh =
        1.0
            + inverter.linearLossShare()
            + 2.0 * inverter.quadraticLossShare() * acWh / inverter.continuousW();
    return intoPerWh + 2.0 * wirePerWh * inverterDcWh(acWh) * intoPerWh;
  }

  // ---- Bank

  private double windowShare(double wh) {
    return bank.windowWh() > 0.0 ? wh / bank.windowWh() : 0.0;
  }

  private double wholeShare() {
    return wholeWh > 0.0 ? (reserveWh + chargeWh) / wholeWh : 0.0;
  }

  /** Most that the bus gets, by what stands in the way, in the order in which they are asked. */
  private Map<String, Double> outLimits(double lockedShare) {
    var limits = new LinkedHashMap<String, Double>();
    limits.put("rate", bank.mostOutWh());
    if (cells != null) {
      limits.put("cut-off", mostOutAtCutOffWh(cells));
    }
    if (tanks != null) {
      limits.put("slow", givenWh(mostDrawWh(tanks)));
    }
    limits.put("empty", givenWh(Math.max(0.0, chargeWh - lockedShare * bank.windowWh())));
    return limits;
  }

  /** Most that the bus puts in, by what stands in the way, in the order in which they are asked. */
  private Map<String, Double> inLimits(double offeredWh, double chargeShare) {
    var limits = new LinkedHashMap<String, Double>();
    limits.put("full", putInWh(Math.max(0.0, bank.windowWh() - chargeWh)));
    limits.put("rate", bank.mostInWh());
    limits.put("cold", bank.mostInWh() * chargeShare);
    double absorptionWh = Double.POSITIVE_INFINITY;
    if (taper != null) {
      double comesWh = smallest(offeredWh, limits, new LinkedHashMap<>());
      absorptionWh = Math.min(absorptionWh, taperedWh(taper, comesWh));
    }
    if (cells != null) {
      absorptionWh = Math.min(absorptionWh, mostInAtChargingVoltageWh(cells));
    }
    if (tanks != null) {
      absorptionWh = Math.min(absorptionWh, putInWh(mostStoreWh(tanks)));
    }
    limits.put("absorption", absorptionWh);
    return limits;
  }

  private static double smallest(
      double wantedWh, Map<String, Double> limits, Map<String, Double> heldBack) {
    double wh = wantedWh;
    for (var limit : limits.entrySet()) {
      double nextWh = Math.min(wh, limit.getValue());
      heldBack.put(limit.getKey(), wh - nextWh);
      wh = nextWh;
    }
    return wh;
  }

  private static Map<String, Double> split(double wh, Map<String, Double> weights) {
    double sumWh = weights.values().stream().mapToDouble(w -> w).sum();
    var parts = new LinkedHashMap<String, Double>();
    weights.forEach((name, weight) -> parts.put(name, sumWh > 0.0 ? wh * weight / sumWh : 0.0));
    return parts;
  }

  private static double part(Map<String, Double> parts, String name) {
    return parts.getOrDefault(name, 0.0);
  }

  // ---- From bus to cells and back

  private double drawnWh(double busWh) {
    if (cells == null) {
      return busWh / bank.dischargeEfficiency();
    }
    return cells.isLossStated() ? busWh + busWh * cells.outLossShare() : ocV * outCurrentA(busWh);
  }

  private double givenWh(double drawWh) {
    if (cells == null) {
      return drawWh * bank.dischargeEfficiency();
    }
    return cells.isLossStated()
        ? drawWh / (1.0 + cells.outLossShare())
        : givenByWh(Math.min(drawWh / ocV, mostA()));
  }

  private double storedWh(double busWh) {
    if (cells == null) {
      return busWh * bank.chargeEfficiency();
    }
    return cells.isLossStated()
        ? busWh - busWh * cells.inLossShare()
        : cells.coulombicEfficiency() * ocV * inCurrentA(busWh);
  }

  private double putInWh(double storedWh) {
    if (cells == null) {
      return storedWh / bank.chargeEfficiency();
    }
    return cells.isLossStated()
        ? storedWh / (1.0 - cells.inLossShare())
        : takenByWh(storedWh / cells.coulombicEfficiency() / ocV);
  }

  private double terminalV(double inWh, double outWh) {
    return ocV + ohm * (inCurrentA(inWh) - outCurrentA(outWh));
  }

  private double givenByWh(double currentA) {
    return (ocV - currentA * ohm) * currentA;
  }

  private double takenByWh(double currentA) {
    return (ocV + currentA * ohm) * currentA;
  }

  /** Half the short-circuit current: beyond it more current gives the bus less. */
  private double mostA() {
    return ocV / 2.0 / ohm;
  }

  private double outCurrentA(double busWh) {
    double lowA = 0.0, highA = mostA();
    for (int i = 0; i < HALVINGS; i++) {
      double a = 0.5 * (lowA + highA);
      if (givenByWh(a) < busWh) {
        lowA = a;
      } else {
        highA = a;
      }
    }
    return highA;
  }

  private double inCurrentA(double busWh) {
    double lowA = 0.0, highA = busWh / ocV;
    for (int i = 0; i < HALVINGS; i++) {
      double a = 0.5 * (lowA + highA);
      if (takenByWh(a) < busWh) {
        lowA = a;
      } else {
        highA = a;
      }
    }
    return highA;
  }

  private double mostOutAtCutOffWh(CellStep c) {
    return ocV <= c.cutOffV() ? 0.0 : givenByWh(Math.min((ocV - c.cutOffV()) / ohm, mostA()));
  }

  private double mostInAtChargingVoltageWh(CellStep c) {
    return ocV >= c.chargingV() ? 0.0 : takenByWh((c.chargingV() - ocV) / ohm);
  }

  // ---- Taper and tanks

  /**
   * The charge at which the hour is over is found by halving, from the time it takes to get there.
   */
  private double taperedWh(Taper t, double comesWh) {
    double from = wholeShare();
    if (from >= t.fullShare() || comesWh <= 0.0) {
      return 0.0;
    }
    if (hoursToReach(t, comesWh, from, t.fullShare()) <= 1.0) {
      happened.add(Happening.CHARGING_ENDED_BELOW_THE_TOP);
      return (t.fullShare() - from) * wholeWh / bank.chargeEfficiency();
    }
    double low = from, high = t.fullShare();
    for (int i = 0; i < HALVINGS; i++) {
      double to = 0.5 * (low + high);
      if (hoursToReach(t, comesWh, from, to) < 1.0) {
        low = to;
      } else {
        high = to;
      }
    }
    double acceptedWh = (low - from) * wholeWh / bank.chargeEfficiency();
    if (acceptedWh < comesWh - 1.0) {
      happened.add(
          t.acceptedShare(from) * bank.mostInWh() > comesWh
              ? Happening.TAPER_MET_WITHIN_THE_HOUR
              : Happening.TAPER_FROM_THE_START_OF_THE_HOUR);
    }
    return acceptedWh;
  }

  /**
   * First at the pace of what comes, then along the falling line, where time goes as a logarithm.
   */
  private double hoursToReach(Taper t, double comesWh, double from, double to) {
    double perWh = bank.chargeEfficiency() / wholeWh; // share of the whole for a Wh at the bus
    double fall = bank.mostInWh() * (1.0 - t.topShare()) / (1.0 - t.fromShare()); // W for a share
    double meets = fall > 0.0 ? t.fromShare() + (bank.mostInWh() - comesWh) / fall : 1.0;
    double evenTo = Math.min(to, Math.max(from, meets));
    double hours = (evenTo - from) / (comesWh * perWh);
    if (to > evenTo) {
      double firstW = bank.mostInWh() - fall * (evenTo - t.fromShare());
      double lastW = bank.mostInWh() - fall * (to - t.fromShare());
      hours += Math.log(firstW / lastW) / (fall * perWh);
    }
    return hours;
  }

  /** y1 - c y0 dies away at the rate k and is driven by the draw. */
  private double availableAfterWh(TwoTank t, double storedWh) {
    double c = t.availableShare(), k = t.exchangePerH();
    double nowWh = reserveWh + chargeWh, beforeWh = nowWh - storedWh;
    double lifted = availableWh - c * beforeWh;
    return c * nowWh + lifted * Math.exp(-k) + storedWh * (1.0 - c) * (1.0 - Math.exp(-k)) / k;
  }

  /** What one Wh through the hour does to the available charge. */
  private static double perWh(TwoTank t) {
    double c = t.availableShare(), k = t.exchangePerH();
    return c + (1.0 - c) * (1.0 - Math.exp(-k)) / k;
  }

  private double restedWh(TwoTank t) {
    double atRest = t.availableShare() * (reserveWh + chargeWh);
    return atRest + (availableWh - atRest) * Math.exp(-t.exchangePerH());
  }

  private double mostDrawWh(TwoTank t) {
    return Math.max(0.0, restedWh(t) / perWh(t));
  }

  private double mostStoreWh(TwoTank t) {
    return Math.max(0.0, (t.availableShare() * wholeWh - restedWh(t)) / perWh(t));
  }
}
