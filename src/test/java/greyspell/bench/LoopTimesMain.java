package greyspell.bench;

import com.sun.management.ThreadMXBean;
import greyspell.balance.BankAxis;
import greyspell.balance.Design;
import greyspell.balance.Lane;
import greyspell.balance.LaneLoop;
import greyspell.balance.Lanes;
import greyspell.balance.RunSums;
import greyspell.balance.UnmetLoop;
import greyspell.storage.step.BankLimits;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleSupplier;

/**
 * The figures of {@link LoopsBench} and {@link MapBench} in CPU time of the running thread, which a
 * busy machine disturbs less: one warm-up each, then rounds that take every one in turn; medians.
 * With the argument "map", the map as well, cell by cell against one bank after another.
 */
final class LoopTimesMain {
  private static final double HOURS = 8760.0;
  private static final ThreadMXBean BEAN = (ThreadMXBean) ManagementFactory.getThreadMXBean();

  private LoopTimesMain() {}

  private record Timed(String name, double perCall, int calls, DoubleSupplier work) {}

  public static void main(String[] args) {
    int rounds = Integer.parseInt(args[0]);
    var loops = new LoopsBench();
    var all = new ArrayList<Timed>();
    all.add(new Timed("ledger_ns", 1e9 / (64 * HOURS), 4, loops::ledger));
    all.add(new Timed("one_ns", 1e9 / (64 * HOURS), 8, loops::one));
    all.add(new Timed("one_own_inverter_ns", 1e9 / (64 * HOURS), 8, loops::oneOwnInverter));
    all.add(new Timed("lanes_unmet_ns", 1e9 / (1024 * HOURS), 3, loops::lanesUnmet));
    all.add(new Timed("lanes_all_ns", 1e9 / (1024 * HOURS), 2, loops::lanesAll));
    all.add(new Timed("lanes_all_own_ns", 1e9 / (1024 * HOURS), 1, loops::lanesAllOwnInverter));
    all.add(new Timed("bank_axis_ns", 1e9 / (16 * HOURS), 30, loops::bankAxis));
    if (args.length > 1) {
      var map = new MapBench();
      all.add(new Timed("map_one_pass_ms", 1e3, 1, () -> onePass(map)));
      all.add(new Timed("map_one_by_one_ms", 1e3, 1, () -> sum(oneByOne(map, true))));
      all.add(new Timed("map_in_lanes_ms", 1e3, 1, () -> sum(inLanes(map))));
      all.add(new Timed("frontier_ms", 1e3, 1, map::frontier));
      all.add(new Timed("sequent_peak_ms", 1e3, 20, map::sequentPeak));
      check(map);
    }
    time(all, rounds);
  }

  private static void time(List<Timed> all, int rounds) {
    var times = new double[all.size()][rounds];
    double kept = 0.0;
    for (int r = -3; r < rounds; r++) {
      for (int i = 0; i < all.size(); i++) {
        Timed one = all.get(i);
        long fromNs = BEAN.getCurrentThreadCpuTime();
        for (int call = 0; call < one.calls(); call++) {
          kept += one.work().getAsDouble();
        }
        if (r >= 0) {
          times[i][r] = (BEAN.getCurrentThreadCpuTime() - fromNs) * 1e-9 / one.calls();
        }
      }
    }
    for (int i = 0; i < all.size(); i++) {
      Arrays.sort(times[i]);
      double median = times[i][rounds / 2] * all.get(i).perCall();
      System.out.printf(Locale.ROOT, "%s=%.4f%n", all.get(i).name(), median);
    }
    System.out.println(kept > 0.0 ? "" : "nothing was computed");
  }

  private static double onePass(MapBench map) {
    double sum = 0.0;
    for (int i = 0; i < MapBench.SIDE; i++) {
      sum += map.axisOf(i).unmetWh()[9];
    }
    return sum;
  }

  /** Unmet hours and Wh of every cell, one bank after another. */
  private static double[][] oneByOne(MapBench map, boolean isIdeal) {
    var cells = new double[MapBench.SIDE * MapBench.SIDE][2];
    for (int i = 0; i < MapBench.SIDE; i++) {
      double panelsKw = MapBench.panelsKw(i);
      List<BankLimits> banks = MapBench.banks(panelsKw, isIdeal);
      for (int j = 0; j < MapBench.SIDE; j++) {
        BankLimits bank = banks.get(j);
        for (var year : map.years) {
          RunSums sums = UnmetLoop.run(year, panelsKw, bank, bank.windowWh());
          cells[i * MapBench.SIDE + j][0] += sums.unmetHours();
          cells[i * MapBench.SIDE + j][1] += sums.unmetWh();
        }
      }
    }
    return cells;
  }

  private static double[][] inLanes(MapBench map) {
    var list = new ArrayList<Lane>();
    for (int i = 0; i < MapBench.SIDE; i++) {
      double panelsKw = MapBench.panelsKw(i);
      for (BankLimits bank : MapBench.banks(panelsKw, false)) {
        list.add(new Lane(panelsKw, new Design(bank, MapBench.INVERTER)));
      }
    }
    var lanes = new Lanes(list);
    for (var year : map.years) {
      lanes.fillUp();
      LaneLoop.runUnmet(year, lanes);
    }
    var cells = new double[list.size()][2];
    for (int c = 0; c < cells.length; c++) {
      cells[c][0] = lanes.unmetHours(c);
      cells[c][1] = lanes.unmetWh(c);
    }
    return cells;
  }

  private static double sum(double[][] cells) {
    return cells[17][1];
  }

  private static void check(MapBench map) {
    double[][] ideal = oneByOne(map, true), real = oneByOne(map, false), lanes = inLanes(map);
    double mostHours = 0.0, mostWh = 0.0, lanesHours = 0.0, lanesWh = 0.0;
    for (int i = 0; i < MapBench.SIDE; i++) {
      BankAxis axis = map.axisOf(i);
      int[] hours = axis.unmetHours();
      double[] wh = axis.unmetWh();
      for (int j = 0; j < MapBench.SIDE; j++) {
        int c = i * MapBench.SIDE + j;
        mostHours = Math.max(mostHours, Math.abs(hours[j] - ideal[c][0]));
        mostWh = Math.max(mostWh, Math.abs(wh[j] - ideal[c][1]));
        lanesHours = Math.max(lanesHours, Math.abs(lanes[c][0] - real[c][0]));
        lanesWh = Math.max(lanesWh, Math.abs(lanes[c][1] - real[c][1]));
      }
    }
    System.out.printf(
        Locale.ROOT, "one pass against one by one: %.0f h, %.1e Wh%n", mostHours, mostWh);
    System.out.printf(
        Locale.ROOT, "lanes against one by one: %.0f h, %.1e Wh%n", lanesHours, lanesWh);
    for (double share : new double[] {0.0002, 0.001, 0.005, 0.01, 0.02, 0.05}) {
      int[] found = map.leastBanks(share);
      int wrong = 0;
      for (int i = 0; i < MapBench.SIDE; i++) {
        int j = 0;
        while (j < MapBench.SIDE
            && real[i * MapBench.SIDE + j][0] > (int) (share * MapBench.YEARS * HOURS)) {
          j++;
        }
        wrong += found[i] == j ? 0 : 1;
      }
      double years = (double) MapBench.SIDE * MapBench.SIDE * MapBench.YEARS;
      System.out.printf(
          Locale.ROOT,
          "frontier at %.2f %% of hours: %d of 60 differ, %.2f %% of the bank-years run%n",
          100.0 * share,
          wrong,
          100.0 * found[MapBench.SIDE] / years);
    }
  }
}
