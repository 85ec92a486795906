package greyspell.study;

import greyspell.outcome.WinterRecord;
import greyspell.study.Study.Steps;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Winters run by several threads; whoever is free takes the next one. */
final class SideBySide {
  private static final int TOLD = 200;

  private final WinterRecord[] records;
  private final Steps steps;
  private final AtomicInteger next = new AtomicInteger();
  private final AtomicReference<@Nullable Throwable> trouble = new AtomicReference<>();
  private int done;

  private SideBySide(int winters, Steps steps) {
    records = new WinterRecord[winters];
    this.steps = steps;
  }

  /**
   * In the order of the winters, whatever thread was first.
   *
   * @param runner makes the worker of one thread
   */
  static List<WinterRecord> run(
      int winters, int threads, Supplier<WinterRunner> runner, Steps steps) {
    var all = new SideBySide(winters, steps);
    var others = new Thread[Math.max(1, Math.min(threads, winters)) - 1];
    for (int t = 0; t < others.length; t++) {
      others[t] = new Thread(() -> all.work(runner), "winters " + (t + 2));
      others[t].setDaemon(true);
      others[t].start();
    }
    all.work(runner);
    for (Thread other : others) {
      join(other);
    }
    all.throwTrouble();
    return Arrays.asList(all.records);
  }

  private void work(Supplier<WinterRunner> runner) {
    try {
      WinterRunner own = runner.get();
      int winter = next.getAndIncrement();
      while (winter < records.length && trouble.get() == null) {
        records[winter] = own.run(winter);
        tell();
        winter = next.getAndIncrement();
      }
    } catch (RuntimeException | Error e) {
      trouble.compareAndSet(null, e);
    }
  }

  private synchronized void tell() {
    done++;
    int every = Math.max(1, records.length / TOLD);
    if (done % every == 0 || done == records.length) {
      steps.step("winter " + done + " of " + records.length, (double) done / records.length);
    }
  }

  private static void join(Thread other) {
    try {
      other.join();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("stopped while winters were run", e);
    }
  }

  private void throwTrouble() {
    Throwable first = trouble.get();
    if (first instanceof Error error) {
      throw error;
    }
    if (first != null) {
      throw (RuntimeException) first;
    }
  }
}
