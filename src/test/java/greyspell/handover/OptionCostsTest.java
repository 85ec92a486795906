package greyspell.handover;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.cause.Said;
import greyspell.cause.SaidValue;
import greyspell.cause.SaidValue.Hours;
import greyspell.report.RemedyCost;
import greyspell.scenario.Scenario.Costs;
import greyspell.study.Explanation.Cost;
import greyspell.study.Explanation.Kind;
import greyspell.study.Explanation.Remedy;
import greyspell.words.Units;
import greyspell.words.Words;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class OptionCostsTest {
  private static final OptionCosts EN = new OptionCosts(Words.of("en", Units.METRIC));

  private static Remedy remedy(
      boolean isFound, double once, String unpriced, @Nullable Double more) {
    var missing = unpriced.isEmpty() ? List.<String>of() : List.of(unpriced);
    Said said = Said.of("remedy.clean");
    return new Remedy(
        Kind.STORAGE,
        said,
        said,
        new Cost(once, missing, more),
        List.of(),
        List.of(),
        isFound,
        false,
        0,
        0,
        0);
  }

  @Test
  void whatIsKnownIsTold() {
    assertEquals("14,500", EN.once(remedy(true, 14_500.0, "", 0.0)));
    assertEquals("over 900", EN.once(remedy(true, 900.0, "costs.per_controller", 0.0)));
    assertEquals("not stated", EN.once(remedy(true, 0.0, "costs.per_pack", 0.0)));
    assertEquals("0", EN.once(remedy(true, 0.0, "", 0.0)));
    assertEquals("-184", EN.moreYearly(remedy(true, 0.0, "", -184.02)));
    assertEquals("not stated", EN.moreYearly(remedy(true, 0.0, "", null)));
  }

  @Test
  void whatIsNotEnoughHasNoPrice() {
    assertEquals("–", EN.once(remedy(false, 14_500.0, "", 5.0)));
    assertEquals("–", EN.moreYearly(remedy(false, 14_500.0, "", 5.0)));
    assertFalse(OptionCosts.doesRun(List.of(remedy(false, 0.0, "", 5.0))));
    assertTrue(OptionCosts.doesRun(List.of(remedy(true, 0.0, "", 5.0))));
  }

  @Test
  void aGeneratorThatIsEnoughTellsItsHoursAndLitres() {
    Said said = Said.of("remedy.clean");
    Said runs =
        Said.of("effect.generator.prevents.all", new Hours(114.0), new SaidValue.Litres(164.0));
    Remedy generator =
        new Remedy(
            Kind.GENERATOR,
            said,
            runs,
            new Cost(0.0, List.of(), null),
            List.of(),
            List.of(),
            true,
            false,
            0,
            0,
            0);
    assertEquals(
        "Start it. That is 114 hours and 164 litres a year.",
        RemedyCost.withRunning("Start it.", generator, EN.words()));
    assertEquals("Buy.", RemedyCost.withRunning("Buy.", remedy(true, 1.0, "", 0.0), EN.words()));
  }

  @Test
  void wiresHaveTheNamesOfTheLanguage() {
    Words german = Words.of("de", Units.METRIC);
    String told =
        RemedyCost.withWires("X.", List.of("array to controller, own plane", "own"), german);
    assertTrue(told.contains("(Module zum Regler, own plane; own)"), told);
  }

  @Test
  void theNoteNamesTheMoneyAndWhatHasNoPrice() {
    var remedies =
        List.of(remedy(true, 1.0, "costs.per_pack", 0.0), remedy(false, 1.0, "costs.other", 0.0));
    String note = EN.note(remedies, costs("EUR", 0.5), true);
    assertTrue(note.contains("(EUR)") && note.endsWith("No price is stated for: costs.per_pack."));
    assertFalse(EN.note(List.of(), costs("", null), false).contains("("));
  }

  @Test
  void withoutPricesThereIsNoColumn() {
    assertFalse(OptionCosts.areStated(Costs.NONE));
    HandedOver handed = HandedOver.english();
    assertTrue(OptionCosts.areStated(handed.result.scenario().costs()));
    String pages = handed.pages.technical().toString();
    assertTrue(pages.contains(handed.words.say("head.once")));
    assertTrue(pages.contains("costs.per_controller"));
  }

  /** Fuel alone is told then, under a head that speaks of wear. */
  @Test
  void wearWithoutAPriceIsNamed() {
    String key = "costs.per_generator_hour";
    assertTrue(EN.note(List.of(), costs("", null), true).contains(key));
    assertFalse(EN.note(List.of(), costs("", null), false).contains(key));
    assertFalse(EN.note(List.of(), costs("", 0.5), true).contains(key));
  }

  private static Costs costs(String currency, @Nullable Double perGeneratorHour) {
    return new Costs(
        currency, null, null, null, null, null, 1.8, perGeneratorHour, null, 20, 0.0, List.of());
  }
}
