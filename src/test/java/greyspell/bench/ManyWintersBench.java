package greyspell.bench;

import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioReader;
import greyspell.study.ManyWinters;
import greyspell.study.WintersWanted;
import greyspell.weather.ensemble.WinterKind;
import java.nio.file.Path;
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

/**
 * A home through a hundred winters, weather drawn and books kept, by the clock. {@link
 * ManyWintersMain} tells the processor's time, which a busy machine does not spoil.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(value = 2, jvmArgsAppend = "-Xmx256m")
public class ManyWintersBench {
  private static final int WINTERS = 100;

  @Param({"MADE", "SPLICED"})
  private String kind = "MADE";

  @Param({"1", "2"})
  private int threads = 1;

  private final Scenario home = ScenarioReader.read(Path.of("scenarios/alder-fold.yaml"));

  @Benchmark
  public int hundredWinters() {
    WintersWanted wanted = WintersWanted.of(home, WINTERS).withHow(WinterKind.valueOf(kind));
    return ManyWinters.run(home, wanted, threads, (what, done) -> {}).book().darkCount();
  }
}
