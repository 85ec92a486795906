package greyspell.bench;

import greyspell.array.DataSheetFit;
import greyspell.array.ModuleSpec;
import greyspell.array.SingleDiode;
import java.util.Objects;
import java.util.Random;
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

/** Nanoseconds a solve of the single-diode curve, over lights and temperatures of a year. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(3)
public class DiodeBench {
  private static final int SOLVES = 4096;
  private static final ModuleSpec SHEET =
      new ModuleSpec(
          "bench", 300.6, 39.8, 9.83, 32.5, 9.25, -0.0038, -0.0031, 0.0005, 45.0, 60, null, null);

  private final SingleDiode diode = Objects.requireNonNull(DataSheetFit.of(SHEET).diode());
  private final double[] lightWm2 = new double[SOLVES];
  private final double[] cellC = new double[SOLVES];

  /** Fixed seed; the result is checked before timing. */
  @Setup
  public void prepare() {
    var random = new Random(123);
    for (int k = 0; k < SOLVES; k++) {
      lightWm2[k] = 1.0 + 1100.0 * random.nextDouble();
      cellC[k] = -25.0 + 95.0 * random.nextDouble();
      double v = diode.maxPowerV(lightWm2[k], cellC[k]);
      double w = v * diode.currentA(lightWm2[k], cellC[k], v);
      if (!(Math.abs(w - diode.maxPowerW(lightWm2[k], cellC[k])) <= 1e-9 * w)) {
        throw new IllegalStateException("voltage and power of the maximum-power point disagree");
      }
    }
  }

  @Benchmark
  @OperationsPerInvocation(SOLVES)
  public double maxPower() {
    double sum = 0.0;
    for (int k = 0; k < SOLVES; k++) {
      sum += diode.maxPowerW(lightWm2[k], cellC[k]);
    }
    return sum;
  }

  @Benchmark
  @OperationsPerInvocation(SOLVES)
  public double currentAtVoltage() {
    double sum = 0.0;
    for (int k = 0; k < SOLVES; k++) {
      sum += diode.currentA(lightWm2[k], cellC[k], 25.6);
    }
    return sum;
  }

  @Benchmark
  @OperationsPerInvocation(SOLVES)
  public double openCircuit() {
    double sum = 0.0;
    for (int k = 0; k < SOLVES; k++) {
      sum += diode.openCircuitV(lightWm2[k], cellC[k]);
    }
    return sum;
  }
}
