package greyspell.bench;

import greyspell.balance.Design;
import greyspell.balance.Forcing;
import greyspell.balance.HourLoop;
import greyspell.balance.Houses;
import greyspell.balance.Ledger;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Nanoseconds a simulated hour of one design, every flow booked, own inverter. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(3)
public class HourLoopBench {
  private static final int HOURS = 8760;

  private Forcing forcing = Houses.random(123, 365);
  private Design design = Houses.perfect(10_000, 0.96, 0.96);
  private Ledger books = new Ledger(forcing, 10_000);

  /** The same house as the tests hold against the plain balance. */
  @Setup
  public void prepare() {
    forcing = Houses.random(123, 365);
    design = Houses.randomDesign(123);
    books = new Ledger(forcing, design.bank().windowWh());
  }

  @Benchmark
  @OperationsPerInvocation(HOURS)
  public double ledgerLoop() {
    return HourLoop.run(forcing, design, 0.0, books);
  }
}
