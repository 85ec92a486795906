package greyspell.study;

import greyspell.outcome.WinterBook;
import greyspell.outcome.WinterRecord;
import greyspell.scenario.Scenario;
import greyspell.study.Study.Steps;
import greyspell.weather.WeatherSeries;
import greyspell.weather.ensemble.EnsembleSeries;
import greyspell.weather.ensemble.WinterSource;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One home through many winters, each run round and round until it starts as it ends, as {@link
 * Study} runs a single year. Only the compact books of a winter are kept, never its hours. The
 * household asks for the same in every winter, so that they differ by their weather alone.
 *
 * @param scenario the home, from the steady state whatever its stated start
 * @param drawn where the winters come from
 * @param book the records, in the order of the winters
 * @param cautions what must be known before the odds are believed
 * @param typical how the weather file's own year stands among them; null where there is nothing to
 *     rank, or nothing to rank it by
 */
public record ManyWinters(
    Scenario scenario,
    WintersDrawn drawn,
    WinterBook book,
    List<String> cautions,
    @Nullable TypicalRank typical) {
  public ManyWinters {
    cautions = List.copyOf(cautions);
  }

  /**
   * Draws the winters and runs the home through each of them.
   *
   * @param threads how many work side by side, at least 1; the result is the same for any number
   * @param steps may be told from any of the threads, from one at a time
   */
  public static ManyWinters run(Scenario home, WintersWanted wanted, int threads, Steps steps) {
    steps.step("drawing winters", 0.0);
    Scenario steady = home.steady();
    WintersDrawn drawn = wanted.draw(steady);
    WinterSource source = drawn.source();
    TypicalRank typical = TypicalRank.of(home, drawn);
    var cautions = new ArrayList<String>();
    if (typical != null) {
      cautions.add(typical.words());
    }
    cautions.addAll(drawn.cautions());
    var shared = new WinterHome(steady, source, cautions);
    List<WinterRecord> records = SideBySide.run(source.years(), threads, shared::runner, steps);
    cautions.addAll(home.cautions());
    return new ManyWinters(steady, drawn, book(steady, drawn, records), cautions, typical);
  }

  private static WinterBook book(Scenario home, WintersDrawn drawn, List<WinterRecord> records) {
    return new WinterBook(
        WinterBook.Kind.valueOf(drawn.kind().name()),
        drawn.source().describe(),
        drawn.source().notes(),
        home.bank().usableWh(),
        home.site().isNorthern(),
        records);
  }

  /** Where one of the winters stands among all, a sentence. */
  public String standing(WinterRecord winter) {
    int rank = book.worstFirst().indexOf(winter) + 1;
    int others = book.count() - 1;
    String place =
        rank == 1
            ? "the hardest"
            : rank == book.count()
                ? "the mildest"
                : "the " + TypicalRank.ordinal(rank) + " hardest";
    return winter.name()
        + (others == 0 ? ", the only winter," : ", " + place + " of " + book.count() + " winters,")
        + " is the one shown in full: ranked by what went unserved, those alike by the bank that"
        + " would have ridden through.";
  }

  /** One of the winters with all its hours, pages and pictures. */
  public StudyResult inFull(WinterRecord winter, Steps steps) {
    WeatherSeries weather = EnsembleSeries.oneWinter(drawn.source(), winter.number());
    return Study.run(scenario, weather, steps);
  }
}
