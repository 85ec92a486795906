package greyspell.bench;

import greyspell.balance.BankAxis;
import greyspell.balance.BankSearch;
import greyspell.balance.BusHours;
import greyspell.balance.Design;
import greyspell.balance.Lane;
import greyspell.balance.LaneLoop;
import greyspell.balance.Lanes;
import greyspell.balance.RunSums;
import greyspell.balance.SequentPeak;
import greyspell.balance.UnmetLoop;
import greyspell.power.step.InverterLimits;
import greyspell.storage.step.BankLimits;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Milliseconds for 60 numbers of panels, 60 banks and 30 years: 946 million design-hours. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
public class MapBench {
  static final int SIDE = 60;
  static final int YEARS = 30;
  static final InverterLimits INVERTER = new InverterLimits(3400.0, 0.035, 0.045);

  @Param({"1", "2"})
  public int threads = 1;

  final List<BusHours> years = new ArrayList<>();

  /** The same thirty years for all. */
  public MapBench() {
    for (int year = 0; year < YEARS; year++) {
      years.add(BusHours.of(SiteYears.of(year), INVERTER));
    }
  }

  static double panelsKw(int i) {
    return 5.0 + 25.0 * i / (SIDE - 1);
  }

  /** Banks 5 to 120 kWh with a tenth in reserve; by rate and leaking, or ideal. */
  static List<BankLimits> banks(double panelsKw, boolean isIdeal) {
    var banks = new ArrayList<BankLimits>();
    for (int i = 0; i < SIDE; i++) {
      double fullWh = 5000.0 + 115_000.0 * i / (SIDE - 1), controllerWh = 1020.0 * panelsKw;
      banks.add(
          new BankLimits(
              0.9 * fullWh,
              0.97,
              0.96,
              isIdeal ? controllerWh : Math.min(0.5 * fullWh, controllerWh),
              isIdeal ? 1e9 : 0.6 * fullWh,
              isIdeal ? 1.0 : 1.0 - 0.03 / 730.0));
    }
    return banks;
  }

  /** One row of the map: unmet hours and Wh of each bank. */
  private interface Row {
    double of(int panels);
  }

  private double map(Row row) throws InterruptedException {
    var sums = new double[threads];
    var workers = new Thread[threads];
    for (int t = 0; t < threads; t++) {
      int first = t;
      workers[t] =
          new Thread(
              () -> {
                for (int i = first; i < SIDE; i += threads) {
                  sums[first] += row.of(i);
                }
              });
      workers[t].start();
    }
    double sum = 0.0;
    for (int t = 0; t < threads; t++) {
      workers[t].join();
      sum += sums[t];
    }
    return sum;
  }

  @Benchmark
  public double onePass() throws InterruptedException {
    return map(this::rowInOnePass);
  }

  private double rowInOnePass(int panels) {
    return axisOf(panels).unmetWh()[SIDE / 2];
  }

  BankAxis axisOf(int panels) {
    var axis = new BankAxis(banks(panelsKw(panels), true));
    for (BusHours year : years) {
      axis.fillUp();
      axis.add(year, panelsKw(panels));
    }
    return axis;
  }

  /** The same map, one ideal bank after another. */
  @Benchmark
  public double oneByOne() throws InterruptedException {
    return map(this::rowOneByOne);
  }

  private double rowOneByOne(int panels) {
    double sum = 0.0;
    for (BankLimits bank : banks(panelsKw(panels), true)) {
      for (BusHours year : years) {
        RunSums sums = UnmetLoop.run(year, panelsKw(panels), bank, bank.windowWh());
        sum += sums.unmetWh() + sums.unmetHours();
      }
    }
    return sum;
  }

  /** Banks that leak, with limits by rate: not for one pass. */
  @Benchmark
  public double inLanes() throws InterruptedException {
    return map(this::rowInLanes);
  }

  /** Four numbers of panels fill the lanes: every fourth row does the work of four. */
  private double rowInLanes(int panels) {
    if (panels >= SIDE / 4) {
      return 0.0;
    }
    var lanes = new ArrayList<Lane>();
    for (int i = 4 * panels; i < 4 * panels + 4; i++) {
      for (BankLimits bank : banks(panelsKw(i), false)) {
        lanes.add(new Lane(panelsKw(i), new Design(bank, INVERTER)));
      }
    }
    var block = new Lanes(lanes);
    for (BusHours year : years) {
      block.fillUp();
      LaneLoop.runUnmet(year, block);
    }
    return block.unmetWh(3);
  }

  /** The least bank for each number of panels, of the same banks; 43.8 h a year are let go. */
  @Benchmark
  public double frontier() {
    return leastBanks(0.005)[0];
  }

  /** Which bank for each number of panels; last, how many bank-years were run hour by hour. */
  int[] leastBanks(double unmetShare) {
    var found = new int[SIDE + 1];
    int mostHours = (int) (unmetShare * YEARS * 8760);
    int hint = SIDE / 2;
    for (int i = 0; i < SIDE; i++) {
      var search = new BankSearch(banks(panelsKw(i), false), hint);
      found[i] = search.leastBank(years, panelsKw(i), mostHours);
      found[SIDE] += search.simulatedWinters();
      hint = found[i];
    }
    return found;
  }

  /** The least bank with which nothing is ever unmet, thirty years, one number of panels. */
  @Benchmark
  public double sequentPeak() {
    BankLimits bank = banks(20.0, true).get(0);
    double mostWh = 0.0;
    for (BusHours year : years) {
      mostWh = Math.max(mostWh, SequentPeak.leastWindowWh(year, 20.0, bank));
    }
    return mostWh;
  }
}
