package greyspell.balance;

import greyspell.power.step.InverterLimits;
import java.util.List;

/**
 * Many designs side by side for {@link LaneLoop}, with their charge and their sums. Sums go on from
 * run to run until {@link #restart}, so that winters can be added one after another.
 */
public final class Lanes {
  /**
   * So many that their state stays in the nearest cache and every small loop is worth its start.
   */
  static final int BLOCK = 256;

  private final List<Lane> lanes;
  final LaneBlock[] blocks;

  /** All full. */
  public Lanes(List<Lane> lanes) {
    if (lanes.isEmpty()) {
      throw new IllegalArgumentException("no lanes");
    }
    this.lanes = List.copyOf(lanes);
    blocks = new LaneBlock[(lanes.size() + BLOCK - 1) / BLOCK];
    for (int b = 0; b < blocks.length; b++) {
      int to = Math.min(lanes.size(), (b + 1) * BLOCK);
      blocks[b] = new LaneBlock(this.lanes.subList(b * BLOCK, to));
    }
    restart();
  }

  public int count() {
    return lanes.size();
  }

  /** Fills every bank and forgets the sums. */
  public void restart() {
    for (LaneBlock block : blocks) {
      block.clear();
      block.fillUp();
    }
  }

  /** Fills every bank, keeping the sums: another winter that starts full. */
  public void fillUp() {
    for (LaneBlock block : blocks) {
      block.fillUp();
    }
  }

  /** Sets one bank's charge, above the reserve. */
  public void startAt(int lane, double chargeWh) {
    block(lane).chargeWh[lane % BLOCK] = chargeWh;
  }

  /** One bank's charge now, above the reserve. */
  public double chargeWh(int lane) {
    return block(lane).chargeWh[lane % BLOCK];
  }

  /** Asked for and not served, all runs since {@link #restart}. */
  public double unmetWh(int lane) {
    LaneBlock block = block(lane);
    int j = lane % BLOCK;
    return block.inverterWh[j] + block.rateWh[j] + block.emptyWh[j];
  }

  /** Hours in which something asked for was not served. */
  public int unmetHours(int lane) {
    return (int) block(lane).unmetHours[lane % BLOCK];
  }

  /** Everything; only after runs with all sums. */
  public RunSums sums(int lane) {
    LaneBlock block = block(lane);
    int j = lane % BLOCK;
    return new RunSums(
        block.inverterWh[j],
        block.rateWh[j],
        block.emptyWh[j],
        block.curtailedWh[j],
        block.bankOutWh[j],
        block.lowestWh[j],
        block.chargeWh[j],
        (int) block.unmetHours[j],
        (int) block.longestHours[j]);
  }

  boolean haveInverter(InverterLimits inverter) {
    for (int i = 0; i < lanes.size(); i++) {
      if (!lanes.get(i).design().inverter().equals(inverter)) {
        return false;
      }
    }
    return true;
  }

  /** Only {@link LaneLoop#runUnmet(BusHours, Lanes)} knows it. */
  void refuseOwnDraw() {
    for (LaneBlock block : blocks) {
      if (block.hasOwnDraw) {
        throw new IllegalArgumentException("a lane draws something of its own");
      }
    }
  }

  boolean isFor(Forcing forcing) {
    for (int i = 0; i < lanes.size(); i++) {
      if (!LaneLoop.isFor(forcing, lanes.get(i).design())) {
        return false;
      }
    }
    return true;
  }

  private LaneBlock block(int lane) {
    return blocks[lane / BLOCK];
  }
}
