package greyspell.sizing;

import greyspell.balance.BankAxis;
import greyspell.balance.BusHours;
import greyspell.balance.Design;
import greyspell.balance.Lane;
import greyspell.balance.LaneLoop;
import greyspell.balance.Lanes;
import greyspell.power.step.InverterLimits;
import greyspell.storage.step.BankLimits;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jspecify.annotations.Nullable;

/**
 * What goes unserved with every pair of a number of panels and a bank: all hours of all parts of
 * the weather, each part from its steady state, as a single home is run. A row is worked out in one
 * pass for all banks where {@link BankAxis#isExactFor} says that this is exact, else by {@link
 * LaneLoop}; both give the numbers of the ledger loop (PanelStorageMapTest). Not for homes that
 * need the full loop.
 */
public final class PanelStorageMap {
  /** Lanes that fill a block. */
  private static final int LANES = 256;

  private final double[][] unmetWh;
  private final int[][] unmetHours;
  private final boolean[] isInOnePass;

  private PanelStorageMap(int rows, int stores) {
    unmetWh = new double[rows][stores];
    unmetHours = new int[rows][stores];
    isInOnePass = new boolean[rows];
  }

  /**
   * Works the whole map out.
   *
   * @param inverter behind which the hours of all rows stand
   * @param stores by rising window
   * @param startShare of the window at the first hour; null for the steady state
   * @param threads that share the rows; the answer is the same for any number
   */
  public static PanelStorageMap of(
      List<PanelRow> rows,
      InverterLimits inverter,
      List<Store> stores,
      @Nullable Double startShare,
      int threads) {
    var map = new PanelStorageMap(rows.size(), stores.size());
    var jobs = new ArrayList<Callable<Void>>();
    int most = Math.max(1, LANES / stores.size());
    for (int from = 0, to = 0; from < rows.size(); from = to) {
      while (to < rows.size()
          && to - from < most
          && rows.get(to).parts() == rows.get(from).parts()) {
        to++;
      }
      var job = new Job(map, rows, from, to, inverter, stores, startShare);
      jobs.add(job::call);
    }
    work(jobs, threads);
    return map;
  }

  /** Not served in all hours of all parts together. */
  public double unmetWh(int row, int store) {
    return unmetWh[row][store];
  }

  /** Hours in which something was not served, all parts together. */
  public int unmetHours(int row, int store) {
    return unmetHours[row][store];
  }

  /** Whether all banks of this row were worked out in one pass. */
  public boolean isInOnePass(int row) {
    return isInOnePass[row];
  }

  private static void work(List<Callable<Void>> jobs, int threads) {
    var pool = Executors.newFixedThreadPool(threads);
    try {
      for (Future<Void> done : pool.invokeAll(jobs)) {
        done.get();
      }
    } catch (ExecutionException e) {
      throw e.getCause() instanceof RuntimeException cause
          ? cause
          : new IllegalStateException(e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("stopped while working out the map", e);
    } finally {
      pool.shutdownNow();
    }
  }

  /** Some rows that stand in the same hours. */
  private record Job(
      PanelStorageMap map,
      List<PanelRow> rows,
      int from,
      int to,
      InverterLimits inverter,
      List<Store> stores,
      @Nullable Double startShare) {
    @Nullable Void call() {
      List<BusHours> parts = rows.get(from).parts().get();
      var inLanes = new ArrayList<Integer>();
      List<BankLimits> banks = stores.stream().map(Store::limits).toList();
      for (int row = from; row < to; row++) {
        if (isExact(parts, rows.get(row).solarFactor(), banks)) {
          onePass(row, parts, banks);
        } else {
          inLanes.add(row);
        }
      }
      if (!inLanes.isEmpty()) {
        lanes(inLanes, parts);
      }
      return null;
    }

    private boolean isExact(List<BusHours> parts, double factor, List<BankLimits> banks) {
      for (Store store : stores) {
        if (store.ownDrawWh() != 0.0) {
          return false;
        }
      }
      return startShare == null
          && parts.stream().allMatch(hours -> BankAxis.isExactFor(hours, factor, banks));
    }

    private void onePass(int row, List<BusHours> parts, List<BankLimits> banks) {
      var axis = new BankAxis(banks);
      map.isInOnePass[row] = true;
      for (BusHours hours : parts) {
        add(row, 0, Laps.inOnePass(axis, hours, rows.get(row).solarFactor(), banks.size()));
      }
    }

    private void lanes(List<Integer> inLanes, List<BusHours> parts) {
      var list = new ArrayList<Lane>();
      for (int row : inLanes) {
        for (Store store : stores) {
          var design = new Design(store.limits(), inverter);
          list.add(new Lane(rows.get(row).solarFactor(), design, store.ownDrawWh()));
        }
      }
      var lanes = new Lanes(list);
      for (BusHours hours : parts) {
        Laps laps = Laps.inLanes(lanes, hours, startWh(list));
        for (int k = 0; k < inLanes.size(); k++) {
          add(inLanes.get(k), k * stores.size(), laps);
        }
      }
    }

    private double @Nullable [] startWh(List<Lane> lanes) {
      if (startShare == null) {
        return null;
      }
      double share = startShare;
      return lanes.stream().mapToDouble(l -> share * l.design().bank().windowWh()).toArray();
    }

    private void add(int row, int first, Laps laps) {
      for (int i = 0; i < stores.size(); i++) {
        map.unmetWh[row][i] += laps.unmetWh[first + i];
        map.unmetHours[row][i] += laps.unmetHours[first + i];
      }
    }
  }
}
