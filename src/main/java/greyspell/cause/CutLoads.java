package greyspell.cause;

import greyspell.balance.Ledger;
import greyspell.balance.LedgerColumn;
import greyspell.cause.SaidValue.Amount;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Set;

/**
 * Which loads went without, from the books. The loop serves classes and sides, never single loads;
 * but where supply falls short within an hour everything that runs on a side is off for the same
 * share of it, so that what each load lacked follows from what it asked for:
 *
 * <pre>
 * runs   = asked, less the classes that were let go or put off in this hour
 * socket = what it runs × [overload / AC + (1 - overload / AC) off],   all of it if the inverter slept
 * on bus = what it runs × off
 * off    = (unmet - overload - asleep) / (AC + DC that run - overload)
 * </pre>
 *
 * Where the books of an hour leave more than one answer (a class put off in part, something made up
 * for, a generator that serves the sockets while the bus goes short) nothing is guessed: that
 * energy is told as not known by load. Held by CutLoadsTest and, sentence by sentence,
 * StoryClaimsTest.
 */
public final class CutLoads {
  private static final double SAME_WH = 1e-6;

  private final Ledger ledger;
  private final List<Asked> loads;

  /** How a load may be let go: never, before the rest, first. */
  public enum Rank {
    MUST,
    SHOULD,
    CAN_WAIT
  }

  /** One load. Owns nothing: the hours are shared and not written. */
  public static final class Asked {
    private final String name;
    private final Rank rank;
    private final boolean isDirectCurrent;
    private final boolean isAlwaysTold;
    private final double[] wh;

    /**
     * Keeps the array.
     *
     * @param isDirectCurrent fed from the bus
     * @param isAlwaysTold however little it lacked: a life or a health depends on it
     * @param wh asked for in each hour
     */
    public Asked(
        String name, Rank rank, boolean isDirectCurrent, boolean isAlwaysTold, double[] wh) {
      this.name = name;
      this.rank = rank;
      this.isDirectCurrent = isDirectCurrent;
      this.isAlwaysTold = isAlwaysTold;
      this.wh = wh;
    }
  }

  /**
   * Energy by load, most first; loads of one name are one.
   *
   * @param named those that are to be told
   * @param othersWh of all other loads together
   * @param unknownWh of which the books do not say whose it was
   */
  public record Cut(List<Amount> named, double othersWh, double unknownWh) {
    public Cut {
      named = List.copyOf(named);
    }
  }

  /** Of all loads of the house, of the ledger's hours. */
  public CutLoads(Ledger ledger, List<Asked> loads) {
    this.ledger = ledger;
    this.loads = List.copyOf(loads);
  }

  /** What was asked for, ran and was not served, from one hour up to another. */
  public Cut unserved(int fromHour, int toHour, int mostNamed) {
    var sum = new Sums();
    for (int k = fromHour; k < toHour; k++) {
      int h = k % ledger.hours();
      if (ledger.isUnmet(h)) {
        unserved(h, sum);
      }
    }
    return sum.told(mostNamed);
  }

  /** What was let go by rule. */
  public Cut letGo(int fromHour, int toHour, int mostNamed) {
    return byRule(LedgerColumn.SHED.of(ledger), fromHour, toHour, mostNamed);
  }

  /** What was put off by rule. */
  public Cut putOff(int fromHour, int toHour, int mostNamed) {
    return byRule(LedgerColumn.PUT_OFF.of(ledger), fromHour, toHour, mostNamed);
  }

  private Cut byRule(double[] ruledWh, int fromHour, int toHour, int mostNamed) {
    var sum = new Sums();
    for (int k = fromHour; k < toHour; k++) {
      int h = k % ledger.hours();
      if (ruledWh[h] > SAME_WH) {
        Set<Rank> ranks = ranksOf(ruledWh[h], h, false);
        sum.unknownWh += ranks.isEmpty() ? ruledWh[h] : 0.0;
        add(ranks, h, 1.0, 1.0, sum);
      }
    }
    return sum.told(mostNamed);
  }

  private void unserved(int h, Sums sum) {
    double unmetWh = ledger.unmetWh(h);
    double ruledWh = LedgerColumn.SHED.of(ledger)[h] + LedgerColumn.PUT_OFF.of(ledger)[h];
    boolean isAllOwn = LedgerColumn.MADE_UP.of(ledger)[h] <= SAME_WH;
    Set<Rank> ranks =
        isAllOwn ? ranksOf(ledger.askedWh(h) - ruledWh, h, true) : EnumSet.noneOf(Rank.class);
    double acWh = asked(ranks, h, false), dcWh = asked(ranks, h, true);
    double asleepWh = LedgerColumn.UNMET_ASLEEP.of(ledger)[h];
    double overWh = LedgerColumn.UNMET_INVERTER.of(ledger)[h];
    double runWh = acWh + dcWh - overWh - asleepWh;
    double offShare = runWh > SAME_WH ? (unmetWh - overWh - asleepWh) / runWh : 0.0;
    double overShare = acWh > 0.0 ? overWh / acWh : 0.0;
    boolean isOneSide = acWh <= SAME_WH || dcWh <= SAME_WH || offShare <= 0.0;
    boolean isTold = !ranks.isEmpty() && offShare <= 1.0 + SAME_WH;
    isTold &= !ledger.isGeneratorOn(h) || isOneSide;
    isTold &= asleepWh <= SAME_WH || Math.abs(asleepWh - acWh) <= SAME_WH;
    if (!isTold) {
      sum.unknownWh += unmetWh;
    } else if (asleepWh > SAME_WH) {
      add(ranks, h, 1.0, offShare, sum);
    } else {
      add(ranks, h, overShare + (1.0 - overShare) * offShare, offShare, sum);
    }
  }

  private void add(Set<Rank> ranks, int h, double acShare, double dcShare, Sums sum) {
    for (Asked load : loads) {
      if (ranks.contains(load.rank)) {
        sum.add(load, load.wh[h] * (load.isDirectCurrent ? dcShare : acShare));
      }
    }
  }

  private double asked(Set<Rank> ranks, int h, boolean isDirectCurrent) {
    double sumWh = 0.0;
    for (Asked load : loads) {
      boolean isIn = ranks.contains(load.rank) && load.isDirectCurrent == isDirectCurrent;
      sumWh += isIn ? load.wh[h] : 0.0;
    }
    return sumWh;
  }

  /** The classes that ask for just so much in this hour; empty if none do, or more than one set. */
  private Set<Rank> ranksOf(double wh, int h, boolean isMustIn) {
    var found = EnumSet.noneOf(Rank.class);
    int answers = 0;
    for (int mask = 0; mask < 4; mask++) {
      var ranks = EnumSet.noneOf(Rank.class);
      add(ranks, isMustIn, Rank.MUST, h);
      add(ranks, (mask & 1) > 0, Rank.SHOULD, h);
      add(ranks, (mask & 2) > 0, Rank.CAN_WAIT, h);
      double askedWh = asked(ranks, h, false) + asked(ranks, h, true);
      if (Math.abs(askedWh - wh) <= SAME_WH && !(answers > 0 && ranks.equals(found))) {
        found = ranks;
        answers++;
      }
    }
    return answers == 1 ? found : EnumSet.noneOf(Rank.class);
  }

  /** A class that asks for nothing in this hour tells nothing apart. */
  private void add(Set<Rank> ranks, boolean isIn, Rank rank, int h) {
    Set<Rank> one = EnumSet.of(rank);
    if (isIn && asked(one, h, false) + asked(one, h, true) > SAME_WH) {
      ranks.add(rank);
    }
  }

  private static final class Sums {
    private final LinkedHashMap<String, Double> byName = new LinkedHashMap<>();
    private final List<String> alwaysTold = new ArrayList<>();
    double unknownWh;

    void add(Asked load, double wh) {
      if (wh > 0.0) {
        byName.merge(load.name, wh, Double::sum);
        if (load.isAlwaysTold) {
          alwaysTold.add(load.name);
        }
      }
    }

    Cut told(int mostNamed) {
      var all = new ArrayList<Amount>();
      byName.forEach((name, wh) -> all.add(new Amount(name, wh)));
      all.sort(Comparator.comparingDouble(a -> -a.wh()));
      var named = new ArrayList<Amount>();
      double othersWh = 0.0;
      for (Amount amount : all) {
        if (named.size() < mostNamed || alwaysTold.contains(amount.name())) {
          named.add(amount);
        } else {
          othersWh += amount.wh();
        }
      }
      return new Cut(named, othersWh, unknownWh);
    }
  }
}
