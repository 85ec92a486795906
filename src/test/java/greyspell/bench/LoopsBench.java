package greyspell.bench;

import greyspell.balance.BankAxis;
import greyspell.balance.BusHours;
import greyspell.balance.Design;
import greyspell.balance.Forcing;
import greyspell.balance.HourLoop;
import greyspell.balance.Lane;
import greyspell.balance.LaneLoop;
import greyspell.balance.Lanes;
import greyspell.balance.Ledger;
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
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Nanoseconds a simulated hour of one design in each of the loops over the same year. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class LoopsBench {
  private static final int HOURS = 8760;
  private static final int FEW = 64;
  private static final int SIDE = 32;
  private static final int MANY = SIDE * SIDE;
  private static final int SIZES = 60;

  private final Forcing forcing = SiteYears.of(0);
  private final BusHours hours = BusHours.of(forcing, inverter(3000.0));
  private final List<Lane> few = grid(8);
  private final Lanes many = new Lanes(grid(SIDE));
  private final Ledger books = new Ledger(forcing, 0.0);
  private final BankAxis axis = new BankAxis(sizes(1020.0));

  private static InverterLimits inverter(double continuousW) {
    return new InverterLimits(continuousW, 0.035, 0.045);
  }

  /** Panels 1.5 to 12 kW by banks 3 to 60 kWh, limits by rate, 3 % self-discharge a month. */
  private static List<Lane> grid(int side) {
    var lanes = new ArrayList<Lane>();
    for (int i = 0; i < side * side; i++) {
      int row = i / side;
      double panelsKw = 1.5 + 10.5 * row / (side - 1.0);
      double fullWh = 3000.0 + 57_000.0 * (i % side) / (side - 1.0);
      var bank =
          new BankLimits(
              fullWh * (i % 2 == 1 ? 0.8 : 0.9),
              0.97,
              0.96,
              Math.min(0.5 * fullWh, 1020.0 * panelsKw),
              0.6 * fullWh,
              1.0 - 0.03 / 730.0);
      lanes.add(new Lane(panelsKw, new Design(bank, inverter(3000.0))));
    }
    return lanes;
  }

  private static List<BankLimits> sizes(double mostInWh) {
    var banks = new ArrayList<BankLimits>();
    for (int i = 0; i < SIZES; i++) {
      double windowWh = 0.9 * (3000.0 + 117_000.0 * i / (SIZES - 1));
      banks.add(new BankLimits(windowWh, 0.97, 0.96, mostInWh, 1e9, 1.0));
    }
    return banks;
  }

  /** Every flow booked. */
  @Benchmark
  @OperationsPerInvocation(FEW * HOURS)
  public double ledger() {
    double sum = 0.0;
    for (Lane lane : few) {
      sum += HourLoop.run(forcing, lane.design(), 0.0, books);
    }
    return sum;
  }

  /** All sums, inverter shared. */
  @Benchmark
  @OperationsPerInvocation(FEW * HOURS)
  public double one() {
    double sum = 0.0;
    for (Lane lane : few) {
      BankLimits bank = lane.design().bank();
      sum += UnmetLoop.run(hours, lane.solarFactor(), bank, bank.windowWh()).unmetEmptyWh();
    }
    return sum;
  }

  /** All sums, an inverter of its own for each design. */
  @Benchmark
  @OperationsPerInvocation(FEW * HOURS)
  public double oneOwnInverter() {
    double sum = 0.0, continuousW = 2000.0;
    for (Lane lane : few) {
      BankLimits bank = lane.design().bank();
      hours.putBehind(inverter(continuousW));
      continuousW = continuousW < 4000.0 ? continuousW + 500.0 : 2000.0;
      sum += UnmetLoop.run(hours, lane.solarFactor(), bank, bank.windowWh()).unmetEmptyWh();
    }
    hours.putBehind(inverter(3000.0));
    return sum;
  }

  @Benchmark
  @OperationsPerInvocation(MANY * HOURS)
  public double lanesUnmet() {
    many.restart();
    LaneLoop.runUnmet(hours, many);
    return many.unmetWh(7);
  }

  @Benchmark
  @OperationsPerInvocation(MANY * HOURS)
  public double lanesAll() {
    many.restart();
    LaneLoop.runAll(hours, many);
    return many.unmetWh(7);
  }

  @Benchmark
  @OperationsPerInvocation(MANY * HOURS)
  public double lanesAllOwnInverter() {
    many.restart();
    LaneLoop.runAll(forcing, many);
    return many.unmetWh(7);
  }

  /** For each number of panels, 60 banks at once. */
  @Benchmark
  @OperationsPerInvocation(16 * HOURS)
  public double bankAxis() {
    double sum = 0.0;
    for (int i = 0; i < 16; i++) {
      axis.restart();
      axis.add(hours, 3.0 + 15.0 * i / 15);
      sum += axis.unmetWh()[3] + axis.unmetHours()[7];
    }
    return sum;
  }
}
