package greyspell.bench;

import greyspell.balance.BusHours;
import greyspell.sizing.PanelRow;
import greyspell.sizing.PanelStorageMap;
import greyspell.sizing.Store;
import greyspell.storage.step.BankLimits;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;

/**
 * The map of 60 numbers of panels, 60 banks and 30 years as {@code tradeoff} works it out, every
 * year from its steady state, and the maps of {@link MapBench}: one thread and two by turns, clock
 * and CPU time of the process. A busy machine disturbs the clock; the least of many rounds is then
 * nearest to a quiet one, and twice the CPU time of one thread over that of two is the most that
 * two could gain.
 */
final class MapTimesMain {
  private static final double BANK_DRAW_W = 0.3;

  private MapTimesMain() {}

  private interface Work {
    double run(int threads) throws InterruptedException;
  }

  private record Timed(String name, Work work) {}

  public static void main(String[] args) throws InterruptedException {
    int rounds = Integer.parseInt(args[0]);
    var map = new MapBench();
    var all = new ArrayList<Timed>();
    all.add(new Timed("steady map, one pass", t -> steady(map, true, 0.0, t)));
    all.add(new Timed("steady map, lanes", t -> steady(map, false, 0.0, t)));
    all.add(new Timed("steady map, lanes that draw", t -> steady(map, false, BANK_DRAW_W, t)));
    all.add(new Timed("one pass", t -> with(map, t).onePass()));
    all.add(new Timed("lanes", t -> with(map, t).inLanes()));
    all.add(new Timed("one by one", t -> with(map, t).oneByOne()));
    for (Timed timed : all) {
      time(timed, rounds);
    }
  }

  private static MapBench with(MapBench map, int threads) {
    map.threads = threads;
    return map;
  }

  private static double steady(MapBench map, boolean isIdeal, double drawWh, int threads) {
    Supplier<List<BusHours>> years = () -> map.years;
    var rows = new ArrayList<PanelRow>();
    var stores = new ArrayList<Store>();
    for (int i = 0; i < MapBench.SIDE; i++) {
      rows.add(new PanelRow(years, MapBench.panelsKw(i)));
    }
    double middleKw = MapBench.panelsKw(MapBench.SIDE / 2);
    for (BankLimits bank : MapBench.banks(middleKw, isIdeal)) {
      stores.add(new Store(bank, stores.size() * drawWh));
    }
    PanelStorageMap made = PanelStorageMap.of(rows, MapBench.INVERTER, stores, null, threads);
    return made.unmetWh(1, 1) + made.unmetHours(2, 2);
  }

  private static void time(Timed timed, int rounds) throws InterruptedException {
    var bean =
        (com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    var clockMs = new double[2][rounds];
    var cpuMs = new double[2][rounds];
    double kept = 0.0;
    for (int r = -2; r < rounds; r++) {
      for (int threads = 1; threads <= 2; threads++) {
        long fromNs = System.nanoTime(), cpuNs = bean.getProcessCpuTime();
        kept += timed.work().run(threads);
        if (r >= 0) {
          clockMs[threads - 1][r] = (System.nanoTime() - fromNs) * 1e-6;
          cpuMs[threads - 1][r] = (bean.getProcessCpuTime() - cpuNs) * 1e-6;
        }
      }
    }
    for (double[] times : new double[][] {clockMs[0], clockMs[1], cpuMs[0], cpuMs[1]}) {
      Arrays.sort(times);
    }
    System.out.printf(
        Locale.ROOT,
        "%s: clock least %.0f and %.0f ms (%.2f), median %.0f and %.0f; CPU median %.0f and %.0f ms%s%n",
        timed.name(),
        clockMs[0][0],
        clockMs[1][0],
        clockMs[0][0] / clockMs[1][0],
        clockMs[0][rounds / 2],
        clockMs[1][rounds / 2],
        cpuMs[0][rounds / 2],
        cpuMs[1][rounds / 2],
        kept > 0.0 ? "" : "; nothing was computed");
  }
}
