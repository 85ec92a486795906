package greyspell.balance;

/**
 * The balance of {@link HourLoop} for many designs at once, hour by hour across the designs, with
 * sums instead of books.
 *
 * <p>Each hour is a few short loops over the lanes without a branch, which the virtual machine turns
 * into vector instructions; a loop with the whole balance in it would be too long for it. The sign
 * of the surplus is looked at once an hour: at night every lane draws, under a bright sky every lane
 * charges, and only between the two is the whole balance worked out.
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
    run(hours, lanes, false);
  }

  /** All of {@link RunSums}, behind one inverter. */
  public static void runAll(BusHours hours, Lanes lanes) {
    run(hours, lanes, true);
  }

  /** Unmet energy and unmet hours only, each lane with its own inverter. */
  public static void runUnmet(Forcing forcing, Lanes lanes) {
    run(forcing, lanes, false);
  }

  /** All of {@link RunSums}, each lane with its own inverter. */
  public static void runAll(Forcing forcing, Lanes lanes) {
    run(forcing, lanes, true);
  }

  private static void run(BusHours hours, Lanes lanes, boolean isAll) {
    if (!lanes.haveInverter(hours.inverter)) {
      throw new IllegalArgumentException("a lane has another inverter than the hours");
    }
    for (LaneBlock block : lanes.blocks) {
      for (int h = 0; h < hours.hours(); h++) {
        double solarWh = hours.solarWh[h], needWh = hours.needWh[h], over = hours.overloadWh[h];
        boolean rises = solarWh * block.leastFactor >= needWh;
        boolean falls = solarWh * block.mostFactor < needWh;
        double locked = hours.lockedShare[h], accepted = hours.chargeShare[h];
        LaneSteps.surplus(block.surplusWh, block.solarFactor, solarWh, needWh);
        if (isAll) {
          all(block, rises, falls, accepted, locked, hours.availablePerBus[h]);
          bookAll(block, rises, hours.servedShare[h], over);
        } else {
          unmet(block, rises, falls, accepted, locked);
          if (!rises || over > 0.0) {
            LaneSteps.book(
                block.lackWh, block.emptyWh, block.unmetHours, hours.servedShare[h], over);
          }
        }
      }
      LaneSteps.add(block.inverterWh, hours.overloadSumWh);
    }
  }

  private static void run(Forcing forcing, Lanes lanes, boolean isAll) {
    if (!lanes.isFor(forcing)) {
      throw new IllegalArgumentException("a lane needs the full loop");
    }
    double[] solarBusWh = forcing.solarBusWh(), controllerWh = forcing.controllerLossWh();
    double[] acWh = forcing.acAskedWh(), dcWh = forcing.dcAskedWh();
    double[] standingWh = forcing.standingWh();
    for (LaneBlock block : lanes.blocks) {
      for (int h = 0; h < forcing.hours(); h++) {
        double solarWh = solarBusWh[h], restWh = standingWh[h] + dcWh[h];
        boolean isOver = acWh[h] > block.leastAcWh;
        ownNeed(block, acWh[h], dcWh[h], restWh);
        LaneSteps.ownSurplus(block.surplusWh, block.solarFactor, block.needWh, solarWh);
        boolean rises = solarWh * block.leastFactor >= block.mostNeedWh(acWh[h], restWh);
        boolean falls =
            solarWh * block.mostFactor < restWh + Math.min(acWh[h], block.leastAcWh);
        double locked = forcing.lockedShare()[h], accepted = forcing.chargeShare()[h];
        if (isAll) {
          double perBus = solarWh > 0.0 ? 1.0 + controllerWh[h] / solarWh : 1.0;
          all(block, rises, falls, accepted, locked, perBus);
          ownBookAll(block, rises, isOver);
        } else {
          unmet(block, rises, falls, accepted, locked);
          if (!rises || isOver) {
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
  private static void unmet(
      LaneBlock b, boolean rises, boolean falls, double accepted, double locked) {
    if (rises) {
      LaneSteps.rise(
          b.surplusWh, b.mostInWh, b.etaIn, b.kept, b.windowWh, b.chargeWh, accepted);
      b.nothingLacks();
    } else if (falls && locked <= 0.0) {
      LaneSteps.fall(b.surplusWh, b.mostOutWh, b.perOut, b.etaOut, b.kept, b.chargeWh, b.lackWh);
      b.mayLack();
    } else {
      LaneSteps.flow(
          b.surplusWh, b.mostInWh, b.mostOutWh, b.flowWh, b.beyondWh, accepted);
      LaneSteps.reach(
          b.flowWh, b.mean, b.half, b.kept, b.windowWh, b.chargeWh, b.lackWh, locked);
      LaneSteps.hold(b.windowWh, b.etaOut, b.chargeWh, b.lackWh, b.beyondWh);
      b.mayLack();
    }
  }

  /** The same, and what is curtailed and given; leaves what lacks by each reason, twice. */
  private static void all(
      LaneBlock b,
      boolean rises,
      boolean falls,
      double accepted,
      double locked,
      double availablePerBus) {
    if (rises) {
      LaneSteps.riseAll(
          b.surplusWh, b.mostInWh, b.etaIn, b.kept, b.chargeWh, b.curtailedWh, accepted,
          availablePerBus);
      LaneSteps.holdFull(
          b.windowWh, b.perIn, b.chargeWh, b.curtailedWh, b.lowestWh, availablePerBus);
      b.nothingLacks();
    } else {
      LaneSteps.flow(
          b.surplusWh, b.mostInWh, b.mostOutWh, b.flowWh, b.beyondWh, accepted);
      LaneSteps.reach(
          b.flowWh, b.mean, b.half, b.kept, b.windowWh, b.chargeWh, b.lackWh, locked);
      LaneSteps.holdLow(b.etaOut, b.chargeWh, b.lackWh);
      LaneSteps.give(b.flowWh, b.lackWh, b.bankOutWh);
      if (falls) {
        LaneSteps.lowest(b.chargeWh, b.lowestWh);
      } else {
        LaneSteps.spare(
            b.surplusWh, b.flowWh, b.beyondWh, b.curtailedWh, availablePerBus);
        LaneSteps.holdFull(
            b.windowWh, b.perIn, b.chargeWh, b.curtailedWh, b.lowestWh, availablePerBus);
      }
      b.mayLack();
    }
  }

  private static void bookAll(LaneBlock b, boolean rises, double servedShare, double overWh) {
    if (!rises) {
      LaneSteps.bookReasons(b.beyondWh, b.lackWh, b.rateWh, b.emptyWh, b.unmetWh, servedShare);
    }
    if (!rises || overWh > 0.0 || !b.isServed) {
      LaneSteps.count(b.unmetWh, b.unmetHours, b.run, b.longestHours, overWh);
      b.isServed = rises && overWh <= 0.0;
    }
  }

  private static void ownBookAll(LaneBlock b, boolean rises, boolean isOver) {
    if (!rises) {
      LaneSteps.ownBookReasons(
          b.beyondWh, b.lackWh, b.rateWh, b.emptyWh, b.unmetWh, b.servedShare);
    }
    if (!rises || isOver || !b.isServed) {
      LaneSteps.ownCount(b.unmetWh, b.unmetHours, b.run, b.longestHours, b.overWh);
      b.isServed = rises && !isOver;
    }
  }
}
