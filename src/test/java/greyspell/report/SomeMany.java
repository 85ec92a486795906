package greyspell.report;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import greyspell.chart.SampleStudy;
import greyspell.outcome.SomeWinters;
import greyspell.outcome.WinterBook;
import greyspell.outcome.WinterBook.Kind;
import greyspell.study.ManyWinters;
import greyspell.study.StudyResult;
import greyspell.study.WintersDrawn;
import greyspell.weather.ensemble.ClimateSite;
import greyspell.weather.ensemble.EnsembleSource;
import greyspell.weather.ensemble.WinterKind;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;

/** Many winters of a small house, told of a sample home. */
final class SomeMany {
  static final ManyWinters MADE = of(SomeWinters.book(60, 18_000.0), false);
  static final ManyWinters MEASURED = of(SomeWinters.book(10, 14_000.0, Kind.MEASURED), false);
  static final ManyWinters SERVED = of(SomeWinters.book(20, 40_000.0, Kind.SPLICED), false);

  private SomeMany() {}

  static ManyWinters of(WinterBook book, boolean isMedical) {
    var sample = new SampleStudy();
    sample.isMedical = isMedical;
    StudyResult result = sample.run();
    var site = ClimateSite.of(result.weather().source(), 47.0, 10.0);
    var drawn =
        new WintersDrawn(
            WinterKind.valueOf(book.kind().name()),
            EnsembleSource.measured(result.weather(), site),
            List.of());
    return new ManyWinters(
        result.scenario(), drawn, book, List.of("One thing to know.", "Another."), null);
  }

  static JsonNode json(ManyWinters many) {
    try {
      var out = new ByteArrayOutputStream();
      WintersJson.write(many, out);
      return new ObjectMapper().readTree(out.toByteArray());
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }
}
