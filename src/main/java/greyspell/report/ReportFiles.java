package greyspell.report;

import greyspell.chart.Picture;
import greyspell.chart.Pictures;
import greyspell.chart.Pictures.NoFonts;
import greyspell.chart.WinterPictures;
import greyspell.quantity.BadInput;
import greyspell.study.ElectricalCheck;
import greyspell.study.ManyWinters;
import greyspell.study.StudyResult;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Writes everything about a run into a folder. Two threads: pictures and pages, books. */
public final class ReportFiles {
  public static final String PAGE = "report.html";
  public static final String LEDGER = "ledger.csv";
  public static final String MONTHS = "months.csv";
  public static final String RESULTS = "results.json";
  public static final String WINTERS = "winters.json";
  public static final String WINTERS_TABLE = "winters.csv";
  public static final String PICTURES = "pictures";

  private final StudyResult result;
  private final Deliver deliver;
  private @Nullable ElectricalCheck check;
  private final @Nullable ManyWinters many;
  private final Consumer<String> progress;
  private final ConcurrentLinkedQueue<Picture> toPaint = new ConcurrentLinkedQueue<>();

  private ReportFiles(
      StudyResult result,
      @Nullable ElectricalCheck check,
      @Nullable ManyWinters many,
      Deliver deliver,
      Consumer<String> progress) {
    this.result = result;
    this.check = check;
    this.many = many;
    this.deliver = deliver;
    this.progress = progress;
  }

  /**
   * Writes all files; either every one is there afterwards, or a {@link BadInput} says why not.
   *
   * @param progress told each file's name, from two threads but one at a time
   * @return the files, the page first
   */
  public static List<Path> write(
      StudyResult result, Path dir, boolean pictures, Consumer<String> progress) {
    return write(result, null, dir, pictures, progress);
  }

  /**
   * The same where the electrical check of the run was made already.
   *
   * @param check null to make it here
   */
  public static List<Path> write(
      StudyResult result,
      @Nullable ElectricalCheck check,
      Path dir,
      boolean pictures,
      Consumer<String> progress) {
    return write(result, check, null, dir, pictures, progress);
  }

  /**
   * The same of one winter out of many, with the books of all of them.
   *
   * @param many null where the home was run through its own weather alone
   */
  public static List<Path> write(
      StudyResult result,
      @Nullable ElectricalCheck check,
      @Nullable ManyWinters many,
      Path dir,
      boolean pictures,
      Consumer<String> progress) {
    try (var deliver = new Deliver(dir)) {
      var files = new ReportFiles(result, check, many, deliver, progress);
      files.run(pictures);
      var written = new ArrayList<>(deliver.done());
      written.sort((a, b) -> Boolean.compare(b.endsWith(PAGE), a.endsWith(PAGE)));
      return List.copyOf(written);
    }
  }

  private void run(boolean pictures) {
    for (String name : Pictures.NAMES) {
      supersede(name);
    }
    for (String name : WinterPictures.NAMES) {
      supersede(name);
    }
    deliver.supersede(WINTERS);
    deliver.supersede(WINTERS_TABLE);
    var pages =
        new FutureTask<@Nullable Void>(
            () -> {
              page(pictures);
              paint();
              return null;
            });
    var thread = new Thread(pages, "pages");
    thread.setDaemon(true);
    thread.start();
    RuntimeException failed = null;
    try {
      books();
    } catch (RuntimeException e) {
      failed = e;
    }
    try {
      pages.get();
    } catch (ExecutionException e) {
      rethrow(e.getCause(), failed);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("stopped while writing pages", e);
    }
    if (failed != null) {
      throw failed;
    }
    paint();
  }

  private void supersede(String picture) {
    deliver.supersede(PICTURES + "/" + picture + ".svg");
    deliver.supersede(PICTURES + "/" + picture + ".png");
  }

  private static void rethrow(@Nullable Throwable cause, @Nullable RuntimeException earlier) {
    if (earlier != null) {
      throw earlier;
    }
    if (cause instanceof RuntimeException e) {
      throw e;
    }
    if (cause instanceof Error e) {
      throw e;
    }
    throw new IllegalStateException(cause);
  }

  private void books() {
    try (var out = deliver.open(LEDGER)) {
      LedgerCsv.write(result, out);
    } catch (IOException e) {
      throw deliver.unwritable(e);
    }
    say(LEDGER);
    write(MONTHS, MonthsCsv.text(result));
    try (var out = deliver.open(RESULTS)) {
      ResultsJson.write(result, check(), out);
    } catch (IOException e) {
      throw deliver.unwritable(e);
    }
    say(RESULTS);
    if (many != null) {
      winters(many);
    }
    paint();
  }

  private void winters(ManyWinters all) {
    write(WINTERS_TABLE, WintersCsv.text(all.book()));
    try (var out = deliver.open(WINTERS)) {
      WintersJson.write(all, out);
    } catch (IOException e) {
      throw deliver.unwritable(e);
    }
    say(WINTERS);
  }

  private void page(boolean pictures) {
    List<String> drawn = pictures ? draw(Pictures.of(result)) : List.of();
    if (many == null) {
      write(PAGE, PageWriter.html(result, check(), drawn));
      return;
    }
    List<String> ofAll = pictures ? draw(WinterPictures.of(many.book())) : List.of();
    write(PAGE, PageWriter.html(result, check(), drawn, many, ofAll));
  }

  private List<String> draw(List<Picture> all) {
    var drawn = new ArrayList<String>();
    toPaint.addAll(all);
    for (Picture p : all) {
      String svg = Pictures.svg(p);
      drawn.add(svg);
      write(PICTURES + "/" + p.name() + ".svg", svg);
    }
    return drawn;
  }

  /** Made by the thread that first needs it. */
  private synchronized ElectricalCheck check() {
    ElectricalCheck known = check;
    if (known == null) {
      known = ElectricalCheck.of(result.scenario(), result);
      check = known;
    }
    return known;
  }

  /** Paints what is still to be painted; both threads come here when their own work is done. */
  private void paint() {
    for (Picture p = toPaint.poll(); p != null; p = toPaint.poll()) {
      try {
        String name = PICTURES + "/" + p.name() + ".png";
        deliver.write(name, Pictures.png(p));
        say(name);
      } catch (NoFonts e) {
        toPaint.clear();
        say(String.valueOf(e.getMessage()));
      }
    }
  }

  private void write(String name, String text) {
    deliver.write(name, text.getBytes(StandardCharsets.UTF_8));
    say(name);
  }

  private void say(String what) {
    synchronized (progress) {
      progress.accept(what);
    }
  }
}
