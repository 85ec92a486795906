package greyspell.handover;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.scenario.ScenarioEdit;
import greyspell.study.Study;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** A page in another language has none of the first one left, the user's own names aside. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class GermanTest {
  /** Frequent English words that are no German ones. */
  private static final Set<String> ENGLISH =
      Set.of(
          "the",
          "and",
          "of",
          "with",
          "without",
          "from",
          "is",
          "are",
          "were",
          "it",
          "to",
          "for",
          "on",
          "off",
          "by",
          "at",
          "not",
          "no",
          "or",
          "that",
          "this",
          "than",
          "which",
          "what",
          "hours",
          "hour",
          "days",
          "year",
          "years",
          "sun",
          "bank's",
          "panels",
          "panel",
          "house",
          "need",
          "needs",
          "charge",
          "battery",
          "reserve.",
          "short",
          "missing",
          "wires",
          "stated",
          "common",
          "practice",
          "source",
          "when",
          "where",
          "each",
          "every",
          "all",
          "kept",
          "over",
          "under",
          "below",
          "above",
          "between",
          "worst",
          "lowest",
          "losses",
          "served",
          "unmet");

  private final HandedOver handed = HandedOver.german();

  @Test
  void theGeneratorsMonthsAddUpToItsYear() {
    double hours = 0.0;
    for (Block block : handed.pages.technical()) {
      if (block instanceof Block.Table t
          && t.caption().equals(handed.words.say("generator.months"))) {
        for (Block.Row row : t.rows()) {
          hours += Double.parseDouble(row.cells().get(1).replace(',', '.'));
        }
      }
    }
    double year =
        handed.result.outcome().total().beyond().generatorHours()
            / (double) handed.result.ledger().forcing().calendar().years();
    assertTrue(year > 10.0);
    assertEquals(year, hours, 12 * 0.05);
  }

  private static double kwh(Block.Row row) {
    return Double.parseDouble(row.cells().get(1).replace(".", "").replace(',', '.'));
  }

  /** Its generator's energy stands among the losses, or what is served could not be added up. */
  @Test
  void lossesCloseWithWhatTheGeneratorGave() {
    double left = 0.0;
    boolean isClosed = false;
    for (Block block : handed.pages.technical()) {
      if (block instanceof Block.Table t
          && t.caption().equals(handed.words.say("section.losses"))) {
        for (Block.Row row : t.rows()) {
          String name = row.cells().get(0);
          if (name.equals(handed.words.say("losses.served"))) {
            // what the bank gained stands in no row
            assertEquals(kwh(row), left, 5.0);
            isClosed = true;
          } else if (name.equals(handed.words.say("losses.others"))) {
            assertTrue(kwh(row) > 100.0);
            left += kwh(row);
          } else {
            left = row.isMarked() ? kwh(row) : left - kwh(row);
          }
        }
      }
    }
    assertTrue(isClosed);
  }

  /** Days of a leap year counted one way gave 2.68 on one page and 2.69 on another. */
  @Test
  void whatTheHouseAsksForIsOneFigureOnAllPages() {
    var total = handed.result.outcome().total();
    String use = handed.words.energy(total.loadWh() / total.days());
    assertTrue(handed.pages.client().toString().contains("mit " + use + " am Tag über das Jahr"));
    assertTrue(handed.pages.technical().toString().contains("am mittleren Tag des Jahres " + use));
  }

  @Test
  void spellsThatTheTableLeavesOutAreCountedBelowIt() {
    var spells = handed.explanation.spells();
    assertTrue(spells.size() > 20);
    double wh =
        spells.subList(20, spells.size()).stream().mapToDouble(s -> s.spell().unmetWh()).sum();
    String more =
        handed.words.say(
            "spells.more", handed.words.number(spells.size() - 20.0, 0), handed.words.energy(wh));
    String half = handed.words.say("spells.half.note");
    assertTrue(
        handed.pages.technical().stream()
            .anyMatch(b -> b instanceof Block.Text t && t.text().equals(half + " " + more)));
  }

  /** By a plain run of the changed file, at 1.80 a litre. */
  @Test
  void whatAnOptionBurnsMoreIsTheDifferenceOfTwoRuns() {
    int seen = 0;
    for (var remedy : handed.explanation.remedies()) {
      ScenarioEdit changed = ScenarioEdit.of(Path.of("scenarios/harrow-combe.yaml"));
      for (var edit : remedy.edits()) {
        String value = edit.value();
        changed = value == null ? changed.remove(edit.path()) : changed.set(edit.path(), value);
      }
      if (remedy.isFound()) {
        var after = Study.run(changed.scenario(null), (w, d) -> {});
        int hours = after.ledger().hours();
        double moreL =
            after.fuelBetween(0, hours).fuelL() - handed.result.fuelBetween(0, hours).fuelL();
        Double more = remedy.cost().moreYearlyCost();
        assertNotNull(more);
        assertEquals(1.8 * moreL / 3.0, more, 0.01);
        assertTrue(Math.abs(more) > 1.0);
        seen++;
      }
    }
    assertTrue(seen > 1);
  }

  @Test
  void noEnglishIsLeftAndTheClientsPartFitsOnePage() throws IOException {
    try (var document = Loader.loadPDF(handed.pdf())) {
      var stripper = new PDFTextStripper();
      stripper.setStartPage(2);
      stripper.setEndPage(2);
      String second = stripper.getText(document);
      assertTrue(second.contains(handed.words.say("technical.title")), second);
    }
    String text = handed.html();
    text = text.replaceAll("(?s)<style>.*?</style>|<script.*?</script>", " ");
    for (String name : names(handed)) {
      text = text.replace(name, " ");
    }
    text = text.replaceAll("<[^>]*(aria-label|content|title)=\"([^\"]*)\"[^>]*>", " $2 ");
    text = text.replaceAll("<[^>]*>", " ").toLowerCase(Locale.ROOT);
    // as are those named in a sentence: full_charge_every
    text = text.replaceAll("[a-z]+(_[a-z]+)+", " ");
    var found = new TreeSet<String>();
    for (String word : text.split("[^a-zäöüß'’]+", -1)) {
      if (ENGLISH.contains(word)) {
        int at = text.indexOf(" " + word + " ");
        found.add(
            word + ": …" + text.substring(Math.max(0, at - 40), Math.min(text.length(), at + 40)));
      }
    }
    assertEquals(Set.of(), found);
    assertFalse(text.contains(handed.words.say("only_english")), "a sentence is only in English");
    assertTrue(text.contains("nach dem strom, den sie für dieses kabel angeben"), "no findings");
    assertTrue(text.contains("klare landluft; übliche praxis, keine quelle"), "no reasons");
    assertTrue(text.contains("batteriebank"), text.substring(0, 2000));
  }

  /** The user's own words and those of the library, as the page escapes them. */
  /** The explanation has its own runs; in the file's own weather they burn what the run burns. */
  @Test
  void theGeneratorOfPageOneIsTheRuns() {
    var result = handed.result;
    double years = result.ledger().forcing().calendar().years();
    double hours = result.outcome().total().beyond().generatorHours() / years;
    double fuelL = result.fuelBetween(0, result.ledger().hours()).fuelL() / years;
    assertTrue(hours > 1.0 && fuelL > 1.0);
    assertEquals(hours, handed.explanation.verdict().meanGeneratorHours(), 1e-9);
    assertEquals(fuelL, handed.explanation.verdict().meanFuelL(), 1e-6);
    String told =
        handed.words.say("client.generator", handed.words.hours(hours), handed.words.fuel(fuelL));
    assertTrue(handed.pages.client().toString().contains(told), told);
  }

  private static List<String> names(HandedOver handed) {
    var home = handed.result.scenario();
    var names = new ArrayList<String>();
    home.load().appliances().forEach(a -> names.add(a.name()));
    home.arrays().forEach(a -> names.add(a.name()));
    home.arrays().forEach(a -> names.add(a.module().name()));
    names.add(home.controller().name());
    names.add(home.inverter().name());
    names.add(home.bank().name());
    names.add(home.name());
    names.add(home.file());
    names.add(handed.result.weather().source().file());
    names.add(handed.result.weather().source().place());
    if (home.generator() != null) {
      names.add(home.generator().spec().name());
    }
    if (home.otherSource() != null) {
      names.add(home.otherSource().name());
    }
    // keys of the scenario file are the same in every language
    handed.result.assumptions().forEach(a -> names.add(a.key()));
    names.replaceAll(n -> n.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;"));
    names.removeIf(String::isEmpty);
    names.sort((a, b) -> b.length() - a.length());
    return names;
  }
}
