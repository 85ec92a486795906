package greyspell.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.balance.BusHours;
import greyspell.balance.Design;
import greyspell.balance.Forcing;
import greyspell.balance.HourLoop;
import greyspell.balance.Houses;
import greyspell.balance.Ledger;
import greyspell.storage.step.BankLimits;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.jspecify.annotations.Nullable;

/**
 * The map against the ledger loop, cell by cell: from the steady state and from a stated charge.
 */
class PanelStorageMapTest {
  private static final double A_MILLIONTH_OF_A_KWH = 1e-3;
  private static final int DAYS = 150;

  /** One cell, as a home is run. */
  private record Books(double unmetWh, int unmetHours) {}

  private static Books booked(
      Forcing forcing, Design design, double factor, double drawWh, @Nullable Double startShare) {
    var columns = forcing.columns();
    columns.solarBusWh = Arrays.stream(forcing.solarBusWh()).map(wh -> wh * factor).toArray();
    columns.standingWh = Arrays.stream(forcing.standingWh()).map(wh -> wh + drawWh).toArray();
    var other = new Forcing(forcing.calendar(), columns);
    double windowWh = design.bank().windowWh(), startWh = windowWh;
    var ledger = new Ledger(other, windowWh);
    if (startShare != null) {
      HourLoop.run(other, design, startShare * windowWh, ledger);
    } else {
      for (int lap = 1; lap <= 10; lap++) {
        double endWh = HourLoop.run(other, design, startWh, ledger);
        if (Math.abs(endWh - startWh) <= 0.01) {
          break;
        }
        startWh = endWh;
      }
    }
    double sumWh = 0.0;
    int hours = 0;
    for (int h = 0; h < ledger.hours(); h++) {
      sumWh += ledger.unmetWh(h);
      hours += ledger.isUnmet(h) ? 1 : 0;
    }
    return new Books(sumWh, hours);
  }

  private static Forcing unlocked(Forcing forcing) {
    var columns = forcing.columns();
    columns.lockedShare = new double[forcing.hours()];
    return new Forcing(forcing.calendar(), columns);
  }

  private static List<Store> stores(long seed, BankLimits like, boolean isIdeal, double drawWh) {
    var random = new Random(seed + 5);
    double stepWh = 50.0 + 4000.0 * random.nextDouble();
    var stores = new ArrayList<Store>();
    for (int i = 0; i < 7; i++) {
      stores.add(
          new Store(
              new BankLimits(
                  i * stepWh,
                  like.chargeEfficiency(),
                  like.dischargeEfficiency(),
                  isIdeal ? 1e9 : 0.4 * i * stepWh,
                  isIdeal ? 1e9 : 0.3 * i * stepWh,
                  isIdeal ? 1.0 : like.keptPerHourShare()),
              i * drawWh));
    }
    return stores;
  }

  @Property(tries = 60)
  void everyCellIsThatOfTheLedger(
      @ForAll long seed, @ForAll @IntRange(min = 0, max = 3) int kind, @ForAll boolean isShared) {
    boolean isIdeal = kind == 0;
    Design like = Houses.randomDesign(seed);
    var random = new Random(seed);
    var forcings = new ArrayList<Forcing>();
    for (int part = 0; part < 2; part++) {
      Forcing forcing = Houses.random(seed + part, DAYS);
      forcings.add(isIdeal ? unlocked(forcing) : forcing);
    }
    var factors = new double[] {0.3, 1.0, 1.0 + 2.0 * random.nextDouble()};
    List<BusHours> same = forcings.stream().map(f -> BusHours.of(f, like.inverter())).toList();
    var rows = new ArrayList<PanelRow>();
    java.util.function.Supplier<List<BusHours>> shared = () -> same;
    for (double factor : factors) {
      rows.add(new PanelRow(isShared ? shared : () -> same, factor));
    }
    Double startShare = kind == 2 ? Double.valueOf(random.nextDouble()) : null;
    double drawWh = kind == 3 ? 4.0 : 0.0;
    List<Store> stores = stores(seed, like.bank(), isIdeal, drawWh);
    var map = PanelStorageMap.of(rows, like.inverter(), stores, startShare, 1 + random.nextInt(2));
    for (int i = 0; i < factors.length; i++) {
      assertTrue(!isIdeal || map.isInOnePass(i));
      for (int j = 0; j < stores.size(); j++) {
        Store store = stores.get(j);
        var design = new Design(store.limits(), like.inverter());
        double wh = 0.0;
        int hours = 0;
        for (Forcing forcing : forcings) {
          Books books = booked(forcing, design, factors[i], store.ownDrawWh(), startShare);
          wh += books.unmetWh;
          hours += books.unmetHours;
        }
        assertEquals(hours, map.unmetHours(i, j), "hours");
        assertEquals(wh, map.unmetWh(i, j), A_MILLIONTH_OF_A_KWH, "Wh");
      }
    }
  }
}
