package greyspell.balance;

import java.util.Arrays;

/**
 * The balance of {@link HourLoop} for many designs at once, hour by hour across the designs, with
 * sums instead of books.
 *
 * <p>Each hour is a few short loops over the lanes without a branch, which the virtual machine
 * turns into vector instructions; a loop with the whole balance in it would be too long for it. The
 * sign of the surplus is looked at once an hour: at night every lane draws, under a bright sky
 * every lane charges, and only between the two is the whole balance worked out.
 *
 * <pre>
 * excess   e(d) = (d + |d|) / 2            d where above 0, else exactly 0
 * flow     x = surplus + e(-most out - surplus) - e(surplus - most in)
 * charge   s = kept charge + x (etaIn + 1/etaOut) / 2 + |x| (etaIn - 1/etaOut) / 2
 *          charge' = s + e(floor - s) - e(s - window),   floor = min(kept charge, locked)
 * lacking  e(-most out - surplus) + etaOut e(floor - s)
 * </pre>
 *
 * Arguments are checked once a run; nothing is allocated. Equal to {@link HourLoop} to a billionth
 * of a kWh with the same unmet hours: LaneLoopTest.
 */
public final class LaneLoop {
  private LaneLoop() {}

  /** Whether sums of the constant-efficiency balance are all that this design needs. */
  public static boolean isFor(Forcing forcing, Design design) {
    return !FullLoop.isNeeded(forcing, design);
  }

  static void check(Forcing forcing, Design design) {
    if (!isFor(forcing, design)) {
      throw new IllegalArgumentException("the design needs the full loop");
    }
  }

  /** Unmet energy and unmet hours only, behind one inverter. */
  public static void runUnmet(BusHours hours, Lanes lanes) {
    runUnmet(hours, lanes, 0, hours.hours());
  }

  /** Unmet energy and unmet hours only, of the hours from one up to another. */
  public static void runUnmet(BusHours hours, Lanes lanes, int from, int to) {
    check(hours, lanes);
    for (LaneBlock block : lanes.blocks) {
      double overloadSumWh = 0.0;
      for (int h = from; h < to; h++) {
        double over = hours.overloadWh[h];
        surplus(hours, block, h);
        unmet(block, hours.chargeShare[h], hours.lockedShare[h]);
        if (!block.allRise || over > 0.0) {
          book(hours, block, h);
        }
        overloadSumWh += over;
      }
      LaneSteps.add(block.inverterWh, overloadSumWh);
    }
  }

  /** All of {@link RunSums}, behind one inverter. */
  public static void runAll(BusHours hours, Lanes lanes) {
    runAllOf(hours, lanes);
  }

  /** Unmet energy and unmet hours only, each lane with its own inverter. */
  public static void runUnmet(Forcing forcing, Lanes lanes) {
    run(forcing, lanes, false);
  }

  /** All of {@link RunSums}, each lane with its own inverter. */
  public static void runAll(Forcing forcing, Lanes lanes) {
    run(forcing, lanes, true);
  }

  private static void check(BusHours hours, Lanes lanes) {
    if (!lanes.haveInverter(hours.inverter)) {
      throw new IllegalArgumentException("a lane has another inverter than the hours");
    }
  }

  private static void surplus(BusHours hours, LaneBlock b, int h) {
    double solarWh = hours.solarWh[h], needWh = hours.needWh[h];
    b.look(
        solarWh,
        needWh + b.leastDrawWh,
        needWh + b.mostDrawWh,
        hours.chargeShare[h],
        hours.lockedShare[h]);
    if (b.hasOwnDraw) {
      LaneSteps.drawnSurplus(b.surplusWh, b.solarFactor, b.ownDrawWh, solarWh, needWh);
    } else {
      LaneSteps.surplus(b.surplusWh, b.solarFactor, solarWh, needWh);
    }
  }

  private static void book(BusHours hours, LaneBlock b, int h) {
    double over = hours.overloadWh[h];
    if (b.hasOwnDraw) {
      double servedWh = hours.servedShare[h] * hours.needWh[h];
      LaneSteps.drawnShare(b.servedShare, b.ownDrawWh, servedWh, hours.needWh[h]);
      Arrays.fill(b.overWh, over);
      LaneSteps.ownBook(b.lackWh, b.emptyWh, b.unmetHours, b.servedShare, b.overWh);
    } else {
      LaneSteps.book(b.lackWh, b.emptyWh, b.unmetHours, hours.servedShare[h], over);
    }
  }

  private static void runAllOf(BusHours hours, Lanes lanes) {
    check(hours, lanes);
    lanes.refuseOwnDraw();
    for (LaneBlock block : lanes.blocks) {
      for (int h = 0; h < hours.hours(); h++) {
        double accepted = hours.chargeShare[h], locked = hours.lockedShare[h];
        surplus(hours, block, h);
        all(block, accepted, locked, hours.availablePerBus[h]);
        bookAll(block, hours.servedShare[h], hours.overloadWh[h]);
      }
      LaneSteps.add(block.inverterWh, hours.overloadSumWh());
    }
  }

  private static void run(Forcing forcing, Lanes lanes, boolean isAll) {
    if (!lanes.isFor(forcing)) {
      throw new IllegalArgumentException("a lane needs the full loop");
    }
    lanes.refuseOwnDraw();
    double[] solarBusWh = forcing.solarBusWh(), controllerWh = forcing.controllerLossWh();
    double[] acWh = forcing.acAskedWh(), dcWh = forcing.dcAskedWh();
    double[] standingWh = forcing.standingWh();
    for (LaneBlock block : lanes.blocks) {
      for (int h = 0; h < forcing.hours(); h++) {
        double solarWh = solarBusWh[h], restWh = standingWh[h] + dcWh[h];
        double locked = forcing.lockedShare()[h], accepted = forcing.chargeShare()[h];
        boolean isOver = acWh[h] > block.leastAcWh;
        double leastWh = restWh + (isOver ? block.leastAcWh : acWh[h]);
        block.look(solarWh, leastWh, block.mostNeedWh(acWh[h], restWh), accepted, locked);
        ownNeed(block, acWh[h], dcWh[h], restWh);
        LaneSteps.ownSurplus(block.surplusWh, block.solarFactor, block.needWh, solarWh);
        if (isAll) {
          double perBus = solarWh > 0.0 ? 1.0 + controllerWh[h] / solarWh : 1.0;
          all(block, accepted, locked, perBus);
          ownBookAll(block, isOver);
        } else {
          unmet(block, accepted, locked);
          if (!block.allRise || isOver) {
            LaneSteps.ownBook(
                block.lackWh, block.emptyWh, block.unmetHours, block.servedShare, block.overWh);
          }
        }
      }
    }
  }

  private static void ownNeed(LaneBlock b, double acWh, double dcWh, double restWh) {
    LaneSteps.throughInverter(b.acWh, b.overWh, b.mostAcWh, b.inverterWh, acWh);
    LaneSteps.need(b.needWh, b.acWh, b.linear, b.quadraticPerWh, b.wirePerWh, restWh);
    LaneSteps.ownShare(b.servedShare, b.acWh, b.needWh, dcWh);
  }

  /** Moves the charge by an hour; leaves twice what is lacking. */
  private static void unmet(LaneBlock b, double accepted, double locked) {
    if (b.allRise) {
      LaneSteps.rise(b.surplusWh, b.mostInWh, b.etaIn, b.kept, b.windowWh, b.chargeWh, accepted);
      b.nothingLacks();
      return;
    }
    b.mayLack = true;
    if (b.allFall && b.isFree) {
      LaneSteps.fall(b.surplusWh, b.perOut, b.etaOut, b.kept, b.chargeWh, b.lackWh);
      return;
    }
    move(b, accepted, locked);
    LaneSteps.hold(b.windowWh, b.etaOut, b.chargeWh, b.lackWh, b.isFree ? b.noneWh : b.beyondWh);
  }

  /** The charge before floor and window hold it, and twice what it is below the floor. */
  private static void move(LaneBlock b, double accepted, double locked) {
    double[] flowWh = b.surplusWh;
    if (!b.isFree) {
      LaneSteps.flow(b.surplusWh, b.mostInWh, b.mostOutWh, b.flowWh, b.beyondWh, accepted);
      flowWh = b.flowWh;
    }
    if (locked > 0.0) {
      LaneSteps.lock(b.kept, b.windowWh, b.chargeWh, b.floorWh, locked);
    }
    LaneSteps.reach(flowWh, b.mean, b.half, b.kept, b.chargeWh, b.lackWh);
    if (locked > 0.0) {
      LaneSteps.below(b.floorWh, b.chargeWh, b.lackWh);
    }
  }

  /** The same, and what is curtailed and given; leaves what lacks by each reason, twice. */
  private static void all(LaneBlock b, double accepted, double locked, double availablePerBus) {
    if (b.allRise) {
      LaneSteps.riseAll(
          b.surplusWh,
          b.mostInWh,
          b.etaIn,
          b.kept,
          b.chargeWh,
          b.curtailedWh,
          accepted,
          availablePerBus);
      b.nothingLacks();
    } else {
      b.mayLack = true;
      move(b, accepted, locked);
      LaneSteps.holdLow(b.etaOut, b.chargeWh, b.lackWh);
      LaneSteps.give(b.isFree ? b.surplusWh : b.flowWh, b.lackWh, b.bankOutWh);
      if (!b.isFree) {
        LaneSteps.spare(b.surplusWh, b.flowWh, b.beyondWh, b.curtailedWh, availablePerBus);
      }
    }
    if (!b.allFall) {
      LaneSteps.holdFull(b.windowWh, b.perIn, b.chargeWh, b.curtailedWh, availablePerBus);
    }
    LaneSteps.lowest(b.chargeWh, b.lowestWh);
  }

  private static void bookAll(LaneBlock b, double servedShare, double overWh) {
    if (!b.allRise) {
      LaneSteps.bookReasons(
          b.isFree ? b.noneWh : b.beyondWh, b.lackWh, b.rateWh, b.emptyWh, b.unmetWh, servedShare);
    }
    boolean isServed = b.allRise && overWh <= 0.0;
    if (!isServed || !b.isServed) {
      LaneSteps.mark(b.unmetWh, b.unmetHours, b.isUnmet, overWh);
      LaneSteps.count(b.isUnmet, b.run, b.longestHours);
      b.isServed = isServed;
    }
  }

  private static void ownBookAll(LaneBlock b, boolean isOver) {
    if (!b.allRise) {
      LaneSteps.ownBookReasons(
          b.isFree ? b.noneWh : b.beyondWh,
          b.lackWh,
          b.rateWh,
          b.emptyWh,
          b.unmetWh,
          b.servedShare);
    }
    boolean isServed = b.allRise && !isOver;
    if (!isServed || !b.isServed) {
      LaneSteps.ownMark(b.unmetWh, b.unmetHours, b.isUnmet, b.overWh);
      LaneSteps.count(b.isUnmet, b.run, b.longestHours);
      b.isServed = isServed;
    }
  }
}
