package greyspell.bench;

import com.sun.management.OperatingSystemMXBean;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioReader;
import greyspell.study.ManyWinters;
import greyspell.study.WintersWanted;
import greyspell.weather.ensemble.WinterKind;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.Locale;

/**
 * Processor time of many winters of one home, all threads and the collector together, with what is
 * read and drawn before them: {@code ManyWintersMain SCENARIO [WINTERS [THREADS [ROUNDS [KIND]]]]}.
 * On a machine shared with other work the processor's time over the threads says what the clock
 * would. Give {@code -Xmx} to see how little memory is enough.
 */
public final class ManyWintersMain {
  private ManyWintersMain() {}

  public static void main(String[] args) {
    Scenario home = ScenarioReader.read(Path.of(args[0]));
    int winters = args.length > 1 ? Integer.parseInt(args[1]) : 1000;
    int threads = args.length > 2 ? Integer.parseInt(args[2]) : 2;
    int rounds = args.length > 3 ? Integer.parseInt(args[3]) : 3;
    String kind = args.length > 4 ? args[4].toUpperCase(Locale.ROOT) : "MADE";
    WintersWanted wanted = WintersWanted.of(home, winters).withHow(WinterKind.valueOf(kind));
    var machine = ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);
    for (int round = 0; round < rounds; round++) {
      long startNs = System.nanoTime();
      long startCpuNs = machine.getProcessCpuTime();
      int dark = ManyWinters.run(home, wanted, threads, (what, done) -> {}).book().darkCount();
      double cpuS = (machine.getProcessCpuTime() - startCpuNs) / 1e9;
      System.out.printf(
          Locale.ROOT,
          "%d winters, %d threads: %.2f s of processor, %.2f s over the threads; clock %.2f s; %d dark%n",
          winters,
          threads,
          cpuS,
          cpuS / threads,
          (System.nanoTime() - startNs) / 1e9,
          dark);
    }
  }
}
