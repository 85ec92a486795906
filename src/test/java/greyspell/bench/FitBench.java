package greyspell.bench;

import greyspell.array.DataSheetFit;
import greyspell.array.LitString;
import greyspell.array.ModuleSpec;
import greyspell.array.PlanesTogether;
import greyspell.array.SingleDiode;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Microseconds to find a module's curve, and to judge two planes together at one hour. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class FitBench {
  private ModuleSpec sheet =
      new ModuleSpec(
          "bench", 300.6, 39.8, 9.83, 32.5, 9.25, -0.0038, -0.0031, 0.0005, 45.0, 60, null, null);
  private final SingleDiode diode = Objects.requireNonNull(DataSheetFit.of(sheet).diode());

  @Benchmark
  public Object fit() {
    return DataSheetFit.of(sheet);
  }

  @Benchmark
  public Object planesTogether() {
    return PlanesTogether.of(
        new LitString(diode, 4, 3, 820.0, 32.0), new LitString(diode, 4, 3, 190.0, 14.0));
  }
}
