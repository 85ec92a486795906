package greyspell.bench;

import greyspell.array.ControllerSpec;
import greyspell.array.ModuleSpec;
import greyspell.electrical.Equipment;
import greyspell.electrical.StringJudge;
import greyspell.electrical.StringRules;
import greyspell.electrical.Wanted;
import java.util.List;
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

/** Milliseconds to judge every arrangement of 12 modules: 40 data sheets on 20 controllers. */
@State(Scope.Benchmark)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(3)
public class StringsBench {
  private final List<ModuleSpec> modules = Equipment.modules(40, 3);
  private final List<ControllerSpec> controllers = Equipment.controllers(20, 4);
  private final StringRules rules = Equipment.rules(-25.0, 38.0);

  /** As a user waits for it: nothing is warm. */
  @Benchmark
  @BenchmarkMode(Mode.SingleShotTime)
  @Warmup(iterations = 0)
  @Measurement(iterations = 1)
  public int cold() {
    return judgeAll();
  }

  @Benchmark
  @BenchmarkMode(Mode.AverageTime)
  @Warmup(iterations = 3, time = 1)
  @Measurement(iterations = 5, time = 1)
  public int warm() {
    return judgeAll();
  }

  private int judgeAll() {
    int allowed = 0;
    for (ModuleSpec module : modules) {
      for (ControllerSpec controller : controllers) {
        var judged = StringJudge.judge(module, controller, rules, Wanted.modules(12));
        allowed += judged.best() == null ? 0 : 1;
      }
    }
    return allowed;
  }
}
