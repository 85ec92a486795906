package greyspell.study;

import greyspell.balance.BusHours;
import greyspell.balance.Design;
import greyspell.balance.Forcing;
import greyspell.balance.LaneLoop;
import greyspell.balance.Ledger;
import greyspell.balance.SteadyState;
import greyspell.balance.UnmetDays;
import greyspell.calendar.HourCalendar;
import greyspell.calendar.Monthly;
import greyspell.outcome.OutcomeReader;
import greyspell.power.step.InverterLimits;
import greyspell.scenario.Scenario;
import greyspell.sizing.Frontier;
import greyspell.sizing.Tally;
import greyspell.sizing.Target;
import greyspell.storage.step.BankLimits;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Numbers of panels and banks of one home, each pair told as {@code run} tells it: by sums alone
 * where nothing is left out by that, else by the full loop. Hours are made once for a number of
 * panels; a pair is given up as soon as a target is broken, the part of the weather that broke the
 * last one first.
 */
final class SizeGrid implements Frontier.Grid {
  private static final int HOURS_OF_DAY = 24;

  /** Solar, need, share served, overload, loss: 8760 numbers of 8 bytes each. */
  private static final long BYTES_OF_YEAR = 5L * 8760 * 8;

  /** Of the memory that there is, a part for the hours of panels. */
  private static final int MEMORY_PARTS = 4;

  /** Three searches run side by side, each with panels of its own. */
  private static final int LEAST_PANELS_TO_KEEP = 3;

  private final Trials trials;
  private final List<Scenario> panels;
  private final BankSteps banks;
  private final List<Target> targets;
  private final boolean isBySums;
  private final InverterLimits inverter;
  private volatile int[] order;
  private final ConcurrentMap<Long, Tally> tallies = new ConcurrentHashMap<>();
  private final Map<Integer, List<BusHours>> kept;
  private @Nullable List<Forcing> forcings;

  /** What one part of the weather comes to. */
  private static final class Part {
    final byte[] unmetHoursOfDay;
    final int generatorHours;

    Part(byte[] unmetHoursOfDay, int generatorHours) {
      this.unmetHoursOfDay = unmetHoursOfDay;
      this.generatorHours = generatorHours;
    }
  }

  /**
   * A grid.
   *
   * @param panels variants of the home, by rising number of panels
   */
  SizeGrid(Trials trials, List<Scenario> panels, BankSteps banks, List<Target> targets) {
    this.trials = trials;
    this.panels = List.copyOf(panels);
    this.banks = banks;
    this.targets = List.copyOf(targets);
    Scenario some = panels.get(0);
    Design design = trials.design(0, some, Set.of());
    isBySums =
        LaneLoop.isFor(trials.forcing(0, some, Set.of()), design)
            && !HomeRun.followsVoltage(some, design);
    inverter = design.inverter();
    order = IntStream.range(0, trials.parts()).toArray();
    int most = panelsToKeep(trials.years());
    kept =
        new LinkedHashMap<>(16, 0.75f, true) {
          @Override
          protected boolean removeEldestEntry(Map.Entry<Integer, List<BusHours>> eldest) {
            return size() > most;
          }
        };
  }

  private static int panelsToKeep(int years) {
    long bytes = Runtime.getRuntime().maxMemory() / MEMORY_PARTS;
    return (int) Math.max(LEAST_PANELS_TO_KEEP, bytes / (BYTES_OF_YEAR * years));
  }

  @Override
  public int panels() {
    return panels.size();
  }

  @Override
  public int banks() {
    return banks.count();
  }

  /** Whether sums are all that is needed. */
  boolean isBySums() {
    return isBySums;
  }

  InverterLimits inverter() {
    return inverter;
  }

  Scenario home(int panel, int bank) {
    return banks.on(panels.get(panel), bank);
  }

  @Override
  public boolean isMet(int panel, int bank) {
    boolean isAskedOfHours = false;
    for (Target target : targets) {
      if (target.isByRule() && !target.isMet(nothing(), darkDays(panel, bank))) {
        return false;
      }
      isAskedOfHours |= !target.isByRule();
    }
    if (!isAskedOfHours) {
      return true;
    }
    Tally known = tallies.get(key(panel, bank));
    return known == null ? isMetPartByPart(panel, bank) : holds(known);
  }

  /** Unmet hours; for the standards' rule alone what is missing of a year's days. */
  @Override
  public double missedBy(int panel, int bank) {
    boolean isAskedOfHours = targets.stream().anyMatch(t -> !t.isByRule());
    return isAskedOfHours ? tally(panel, bank).unmetHours() : 365.0 - darkDays(panel, bank);
  }

  private boolean holds(Tally tally) {
    return targets.stream().allMatch(t -> t.isByRule() || t.isMet(tally, 0.0));
  }

  private boolean isMetPartByPart(int panel, int bank) {
    Tally tally = nothing();
    int[] order = this.order;
    int atOnce = order.length == 1 ? 1 : Runtime.getRuntime().availableProcessors();
    for (int from = 0; from < order.length; from += atOnce) {
      int[] next = IntStream.range(from, Math.min(order.length, from + atOnce)).toArray();
      List<Part> parts = parts(panel, bank, IntStream.of(next).map(k -> order[k]).toArray());
      for (int k = 0; k < next.length; k++) {
        tally = and(tally, order[next[k]], parts.get(k));
        if (!holds(tally)) {
          bringForward(order, next[k]);
          return false;
        }
      }
    }
    if (order.length == 1) {
      tallies.put(key(panel, bank), tally);
    }
    return true;
  }

  /** What breaks one pair will soon break the next. */
  private void bringForward(int[] before, int place) {
    int[] next = before.clone();
    System.arraycopy(before, 0, next, 1, place);
    next[0] = before[place];
    order = next;
  }

  /** All the weather. */
  Tally tally(int panel, int bank) {
    Tally known = tallies.get(key(panel, bank));
    if (known == null) {
      known = nothing();
      int[] all = IntStream.range(0, trials.parts()).toArray();
      List<Part> parts = parts(panel, bank, all);
      for (int part : all) {
        known = and(known, part, parts.get(part));
      }
      tallies.put(key(panel, bank), known);
    }
    return known;
  }

  private Tally nothing() {
    return Tally.none(trials.years(), trials.winters().size());
  }

  private Tally and(Tally tally, int part, Part counted) {
    return tally.and(
        calendar(part),
        trials.home().site().isNorthern(),
        counted.unmetHoursOfDay,
        counted.generatorHours);
  }

  private HourCalendar calendar(int part) {
    return trials.calendar(part);
  }

  private List<Part> parts(int panel, int bank, int[] parts) {
    if (!isBySums) {
      Scenario variant = home(panel, bank);
      return IntStream.of(parts).parallel().mapToObj(p -> counted(books(p, variant))).toList();
    }
    BankLimits limits = banks.banks().get(bank).limits();
    double moreWh = banks.banks().get(bank).standbyW() - panels.get(panel).bank().standbyW();
    List<BusHours> bus = busHours(panel);
    Double startShare = panels.get(panel).startChargeFraction();
    return IntStream.of(parts)
        .parallel()
        .mapToObj(p -> bySums(bus.get(p).drawing(moreWh), limits, startShare))
        .toList();
  }

  private Ledger books(int part, Scenario variant) {
    return trials.books(part, variant, Set.of());
  }

  private static Part counted(Ledger ledger) {
    var days = new byte[ledger.hours() / HOURS_OF_DAY];
    int generatorHours = 0;
    for (int h = 0; h < ledger.hours(); h++) {
      days[h / HOURS_OF_DAY] += (byte) (ledger.isUnmet(h) ? 1 : 0);
      generatorHours += ledger.isFull() && ledger.isGeneratorOn(h) ? 1 : 0;
    }
    return new Part(days, generatorHours);
  }

  private static Part bySums(BusHours hours, BankLimits bank, @Nullable Double startShare) {
    var days = new byte[hours.hours() / HOURS_OF_DAY];
    if (startShare == null) {
      SteadyState.run(bank.windowWh(), startWh -> UnmetDays.run(hours, bank, startWh, days));
    } else {
      UnmetDays.run(hours, bank, startShare * bank.windowWh(), days);
    }
    return new Part(days, 0);
  }

  /** Of each part, with the home's own bank; empty where sums are not enough. */
  synchronized List<BusHours> busHours(int panel) {
    List<BusHours> known = kept.get(panel);
    if (known == null) {
      known =
          isBySums ? each(p -> BusHours.of(forcing(p, panels.get(panel)), inverter)) : List.of();
      kept.put(panel, known);
    }
    return known;
  }

  private Forcing forcing(int part, Scenario variant) {
    return trials.forcingByStrings(part, variant);
  }

  private <T> List<T> each(IntFunction<T> ofPart) {
    return IntStream.range(0, trials.parts()).parallel().mapToObj(ofPart).toList();
  }

  /** Of each part of the weather, of the home whose weather this is. */
  synchronized List<Forcing> forcings() {
    List<Forcing> known = forcings;
    if (known == null) {
      known = each(p -> forcing(p, trials.home()));
      forcings = known;
    }
    return known;
  }

  /**
   * Days that a full bank lasts without sun in the month in which it lasts shortest. Of the panels
   * only their controllers' standby counts.
   */
  double darkDays(int panel, int bank) {
    Scenario variant = home(panel, bank);
    double moreWh = standbyW(variant) - standbyW(trials.home());
    var sum = new double[12];
    for (int part = 0; part < trials.parts(); part++) {
      Forcing.Columns columns = forcings().get(part).columns();
      double[] standingWh = columns.standingWh.clone();
      for (int h = 0; h < standingWh.length; h++) {
        standingWh[h] += moreWh;
      }
      columns.standingWh = standingWh;
      Monthly days =
          OutcomeReader.darkDays(
              new Forcing(calendar(part), columns), new Design(variant.bank().limits(), inverter));
      for (int m = 0; m < 12; m++) {
        sum[m] += days.in(m + 1);
      }
    }
    double least = Double.POSITIVE_INFINITY;
    for (double days : sum) {
      least = Math.min(least, days / trials.parts());
    }
    return least;
  }

  private static double standbyW(Scenario home) {
    return home.bank().standbyW() + home.controller().standbyOfAllW();
  }

  private static long key(int panel, int bank) {
    return ((long) panel << 32) + bank;
  }
}
