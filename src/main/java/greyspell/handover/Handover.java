package greyspell.handover;

import greyspell.quantity.BadInput;
import greyspell.quantity.FileTrouble;
import greyspell.quantity.Place;
import greyspell.report.Deliver;
import greyspell.scenario.Scenario;
import greyspell.scenario.WeatherChoice.WeatherPath;
import greyspell.study.ElectricalCheck;
import greyspell.study.Explanation;
import greyspell.study.LoadAudit;
import greyspell.study.PlayGrid;
import greyspell.study.PlayGrids;
import greyspell.study.StudyResult;
import greyspell.words.Words;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;

/** Writes explanation.html and explanation.pdf: both, or neither. */
public final class Handover {
  public static final String PAGE = "explanation.html";
  public static final String PAPER = "explanation.pdf";

  private Handover() {}

  /** Loads on another thread what setting the PDF takes, while the home is still run. */
  public static void prepare() {
    var thread = new Thread(Pdf::prepare, "pdf");
    thread.setDaemon(true);
    thread.start();
  }

  /**
   * Both files, or a {@link BadInput} that says why not.
   *
   * @param grid of the run, {@link PlayGrids#of}
   * @param check of the run
   * @param progress told each file's name
   */
  public static List<Path> write(
      StudyResult result,
      PlayGrid grid,
      Explanation explanation,
      ElectricalCheck check,
      Words words,
      Paper paper,
      Path dir,
      Consumer<String> progress) {
    Pages pages = pages(result, grid, explanation, check, words);
    try (var deliver = new Deliver(dir)) {
      var pdf = CompletableFuture.supplyAsync(() -> Pdf.of(pages, words, paper));
      deliver.write(PAGE, PageText.screen(pages, words).getBytes(StandardCharsets.UTF_8));
      progress.accept(PAGE);
      deliver.write(PAPER, pdf.join());
      progress.accept(PAPER);
      return List.copyOf(deliver.done());
    }
  }

  static Pages pages(
      StudyResult result, Explanation explanation, ElectricalCheck check, Words words) {
    return pages(result, PlayGrids.of(result), explanation, check, words);
  }

  private static Pages pages(
      StudyResult result,
      PlayGrid grid,
      Explanation explanation,
      ElectricalCheck check,
      Words words) {
    Scenario home = result.scenario();
    var told =
        new Told(
            result,
            explanation,
            check,
            LoadAudit.of(home, result.weather()),
            grid,
            hash(home),
            version());
    var technical = new Sheet(words, told.kwhDecimals());
    SitePages.add(told, technical);
    EquipmentPages.add(told, technical);
    BooksPages.add(told, technical);
    ClosingPages.add(told, technical);
    return new Pages(
        words.say("title", home.name()),
        words.say("figure.sheet", home.name()),
        ClientPage.of(told, words),
        technical.blocks());
  }

  private static String version() {
    String version = Handover.class.getPackage().getImplementationVersion();
    return version == null ? "greyspell" : "greyspell " + version;
  }

  /** Of the scenario's text and its weather files, in this order. */
  static String hash(Scenario home) {
    var files = new ArrayList<Path>();
    files.add(Path.of(home.file()));
    for (WeatherPath weather : home.weather().files()) {
      files.add(Path.of(weather.resolvedPath()));
    }
    try {
      var digest = MessageDigest.getInstance("SHA-256");
      for (Path file : files) {
        if (Files.isRegularFile(file)) {
          digest.update(Files.readAllBytes(file));
        }
      }
      return HexFormat.of().formatHex(digest.digest());
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    } catch (IOException e) {
      throw BadInput.of(
          Place.of(home.file()),
          "cannot be read again for its hash (" + FileTrouble.words(e) + ")",
          "must stay in place while the pages are made",
          "Run it again.");
    }
  }
}
