package greyspell.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.calendar.HourCalendar;
import greyspell.chart.FullHome;
import greyspell.chart.SampleStudy;
import greyspell.chart.Say;
import greyspell.chart.WinterShown;
import greyspell.study.ElectricalCheck;
import greyspell.study.StudyResult;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class VerdictTest {
  private static SampleStudy served() {
    var sample = new SampleStudy();
    sample.panelsW = 30_000.0;
    sample.bankWh = 200_000.0;
    return sample;
  }

  @Test
  void countsTheWintersAndDatesTheWorst() {
    StudyResult result = new SampleStudy().run();
    var worst = WinterShown.of(result);
    var verdict = Verdict.of(result);
    assertFalse(verdict.isAllServed());
    assertTrue(
        verdict
            .headline()
            .startsWith(
                "The lights went out in 2 of 2 winters; the worst, "
                    + worst.winter().name()
                    + ", was "
                    + Say.kwh(worst.figures().unmetWh())
                    + " short over "
                    + Say.hours(worst.figures().unmetHours())
                    + " in "),
        verdict.headline());
    assertTrue(
        verdict.headline().matches(".* shortfalls, the longest \\d+ hours from \\d+ \\w+\\."));
    assertTrue(verdict.text().contains("The half winters at the two ends"), verdict.text());
  }

  @Test
  void someWintersFailAndTheHalfWintersAreNotCounted() {
    var sample = new SampleStudy();
    sample.panelsW = 14_000.0;
    sample.bankWh = 40_000.0;
    StudyResult result = sample.run();
    long failed =
        Facts.wholeWinters(result).stream().filter(w -> w.figures().unmetHours() > 0).count();
    assertEquals(1, failed, "the sample is meant to fail in one winter of two");
    String headline = Verdict.of(result).headline();
    assertTrue(headline.startsWith("The lights went out in 1 of 2 winters; the worst, "), headline);
  }

  @Test
  void noneOfNStillAllowsARisk() {
    var sample = served();
    sample.calendar = HourCalendar.of(2020, 4);
    var verdict = Verdict.of(sample.run());
    assertTrue(verdict.isAllServed());
    assertEquals("No shortfall in 3 winters.", verdict.headline());
    assertEquals(
        List.of(
            "3 winters without a shortfall still allow a risk of up to 63 % a winter (at 95 %"
                + " confidence)."),
        verdict.more());
  }

  /** 1 - 0.05^(1/N): 95 %, 78 %, 63 % and, of 14 winters, 19 %; worked out by hand. */
  @Test
  void allowedRiskIsTheOneSidedBound() {
    assertEquals(0.95, Verdict.allowedShare(1), 1e-12);
    assertEquals(0.7764, Verdict.allowedShare(2), 5e-5);
    assertEquals(0.6316, Verdict.allowedShare(3), 5e-5);
    assertEquals(0.1926, Verdict.allowedShare(14), 5e-5);
  }

  @Test
  void aTypicalYearIsOneMiddlingDraw() {
    var grey = new SampleStudy();
    grey.calendar = HourCalendar.typicalYear();
    var failed = Verdict.of(grey.run());
    assertTrue(
        failed.headline().startsWith("The lights went out in the typical year: it was "),
        failed.headline());
    assertTrue(failed.text().contains("one middling draw"));
    var good = served();
    good.calendar = HourCalendar.typicalYear();
    var verdict = Verdict.of(good.run());
    assertEquals("No shortfall in the typical year.", verdict.headline());
    assertTrue(verdict.text().contains("one middling draw"));
    assertFalse(verdict.text().contains("95 %"), "a typical year is no sample of winters");
  }

  @Test
  void oneRealYearIsNamedAsOne() {
    var sample = served();
    sample.calendar = HourCalendar.of(2022, 1);
    assertEquals(
        "No shortfall in the one year looked at, 2022. One year without a shortfall still allows a risk of"
            + " up to 95 % a winter (at 95 % confidence).",
        Verdict.of(sample.run()).text());
  }

  @Test
  void aSmallInverterIsNotCalledADarkHouse() {
    var sample = served();
    sample.inverterW = 2_000.0;
    StudyResult result = sample.run();
    assertEquals(0.0, result.outcome().total().unmetEmptyWh());
    var verdict = Verdict.of(result);
    assertTrue(
        verdict
            .headline()
            .startsWith("The bank held through 2 winters, but the inverter was too small in "),
        verdict.headline());
    assertFalse(verdict.text().contains("lights went out"), verdict.text());
  }

  @Test
  void aSlowBankIsNamedToo() {
    var sample = served();
    sample.maxDischargeW = 500.0;
    var verdict = Verdict.of(sample.run());
    assertTrue(
        verdict.headline().contains("but the bank's discharge limit was too low in "),
        verdict.headline());
  }

  @Test
  void whatTheInverterDidIsToldApartFromAnEmptyBank() {
    var sample = new SampleStudy();
    sample.inverterW = 2_000.0;
    assertTrue(Verdict.of(sample.run()).text().contains("the inverter was too small"));
  }

  @Test
  void southernWintersAreCalendarYearsAndAMiddlingOneIsTold() {
    var sample = new SampleStudy();
    sample.latitudeDeg = -43.5;
    StudyResult result = sample.run();
    var verdict = Verdict.of(result);
    assertTrue(
        verdict
            .headline()
            .matches("The lights went out in 3 of 3 winters; the worst, 20\\d\\d, was .*"));
    assertTrue(
        verdict.headline().matches(".* from \\d+ (April|May|June|July|August)\\."),
        verdict.headline());
    assertTrue(verdict.text().contains("A middling winter is "), verdict.text());
    assertTrue(KeyFigures.alwaysOn(result).endsWith("of June's need"));
  }

  @Test
  void aMedicalLoadIsNotCalledServed() {
    var sample = served();
    sample.isMedical = true;
    String text = Verdict.of(sample.run()).text();
    assertTrue(text.contains("breathing aid") && text.contains("independent backup"), text);
  }

  @Test
  void theGeneratorsHelpIsTold() {
    var verdict = Verdict.of(FullHome.RESULT);
    assertTrue(
        verdict.text().matches(".*the generator ran \\d+ hours and burnt \\d+ litres \\(.*"),
        verdict.text());
    assertTrue(verdict.text().contains("with its help"), verdict.text());
    assertTrue(verdict.demand().contains("breathing aid"), verdict.demand());
  }

  @Test
  void tenWattsLessAreWhatTheSecondRunSaves() {
    StudyResult grey = new SampleStudy().run();
    double saved = grey.outcome().total().unmetWh() / 3.0 - grey.besides().tenWattsLess().wh();
    assertTrue(saved > 0.0);
    assertEquals(Say.kwh(saved) + " of shortfall", new Answers(grey).tenWattsLess());
    assertEquals("no shortfall in this weather", new Answers(served().run()).tenWattsLess());
  }

  @Test
  void neverIsNotSaid() {
    var good = served().run();
    var bad = new SampleStudy().run();
    for (var result : List.of(good, bad)) {
      String all =
          Verdict.of(result).text()
              + Summary.text(result, List.of())
              + PageWriter.html(result, ElectricalCheck.of(result.scenario(), result), List.of());
      assertFalse(all.toLowerCase(Locale.ROOT).contains("never"));
    }
  }

  @Test
  void alwaysOnIsWattsEnergyAndShare() {
    // 45.5 W a day is 1.092 kWh; the house asks 2.64 + 0.9 + 2.4 kWh AC and 0.72 kWh DC, and 2.3
    // kWh on
    // one day in seven
    var on = Facts.alwaysOn(new SampleStudy().run());
    assertEquals(45.5, on.meanW(), 1e-9);
    assertEquals(1.092 / (1.092 + 6.66 + 2.3 / 7), on.needShare(), 0.001);
    assertEquals(2, on.partsW().size());
    assertEquals(42.0, on.partsW().get(0).wh(), 1e-9);
  }
}
