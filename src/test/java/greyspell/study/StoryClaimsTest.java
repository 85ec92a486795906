package greyspell.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import greyspell.balance.Design;
import greyspell.balance.Ledger;
import greyspell.balance.LedgerColumn;
import greyspell.balance.NamedHours;
import greyspell.calendar.HourCalendar;
import greyspell.cause.CutLoads;
import greyspell.cause.DarkSpell;
import greyspell.cause.DarkSpells;
import greyspell.cause.Said;
import greyspell.cause.SaidValue;
import greyspell.cause.SpellStory;
import greyspell.load.LoadHours;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioEdit;
import greyspell.scenario.ScenarioReader;
import greyspell.words.Units;
import greyspell.words.Words;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Never a claim that the numbers don't carry: every sentence of every spell's story is read as it
 * is printed, its dates, hours and figures are taken from the text, and all is worked out again
 * from the hours of the ledger.
 */
final class StoryClaimsTest {
  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);
  private static final Words WORDS = Words.of("en", Units.METRIC);
  private static final Set<String> MET = new TreeSet<>();

  static Stream<Scenario> homes() throws Exception {
    try (var files = Files.list(Path.of("scenarios"))) {
      List<Path> sorted = files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
      return Stream.concat(sorted.stream().map(ScenarioReader::read), Stream.of(awkward(), weak()));
    }
  }

  private static final Path HARROW_COMBE = Path.of("scenarios/harrow-combe.yaml");

  /** An inverter that is too small for what it feeds, and a bank that takes little at a time. */
  private static Scenario awkward() {
    return ScenarioEdit.of(HARROW_COMBE)
        .set("inverter.continuous_power", "0.16 kW")
        .set("inverter.surge_power", "1 kW")
        .set("bank.battery.max_charge", "8 A")
        .scenario(null);
  }

  /** A bank that cannot give fast. */
  private static Scenario weak() {
    return ScenarioEdit.of(Path.of("scenarios/peat-hut.yaml"))
        .set("bank.battery.max_discharge", "2 A")
        .scenario(null);
  }

  @ParameterizedTest
  @MethodSource("homes")
  void everySentenceIsCarriedByTheLedger(Scenario home) {
    Trials trials = Trials.of(home, (what, done) -> {});
    Ledger ledger = trials.books(0, home, Set.of());
    double[] needWh = needWh(ledger, trials.design(0, home, Set.of()));
    List<DarkSpell> spells = DarkSpells.of(ledger, needWh);
    double sumWh = 0.0;
    int sumHours = 0;
    LoadHours asked = trials.load(0, home);
    CutLoads loads = ExplainStudy.loads(ledger, asked);
    for (DarkSpell spell : spells) {
      var claims = new Claims(ledger, needWh, spell, asked);
      SpellStory.of(spell, ledger, needWh, loads, true).forEach(claims::hold);
      claims.holdTogether();
      SpellStory.days(spell, true).forEach(claims::holdDay);
      sumWh += spell.unmetWh();
      sumHours += spell.unmetHours();
    }
    double allWh = 0.0;
    int allHours = 0;
    for (int h = 0; h < ledger.hours(); h++) {
      allWh += ledger.unmetWh(h);
      allHours += ledger.isUnmet(h) ? 1 : 0;
    }
    assertEquals(allHours, sumHours, "each dark hour is in one spell");
    assertEquals(allWh, sumWh, 1e-6);
  }

  /** A sentence that no story has would be tried by nobody. */
  @AfterAll
  static void everySentenceIsMetSomewhere() {
    var missed = new TreeSet<String>();
    for (String key : WORDS.keys()) {
      if (key.startsWith("story.") && !MET.contains(key)) {
        missed.add(key);
      }
    }
    // rarer reasons, told by the same line as those that are met
    missed.removeAll(Set.of("story.reason.asleep", "story.reason.cut_off", "story.reason.slow"));
    assertEquals(Set.of(), missed);
  }

  /** Apart from BusNeed: always-on draw, loads on the bus, sockets through the inverter. */
  private static double[] needWh(Ledger ledger, Design design) {
    var need = new double[ledger.hours()];
    for (int h = 0; h < need.length; h++) {
      double acW = Math.min(ledger.forcing().acAskedWh()[h], design.inverter().continuousW());
      need[h] =
          ledger.forcing().standingWh()[h]
              + ledger.forcing().dcAskedWh()[h]
              + design.inverter().busWh(acW);
    }
    return need;
  }

  private static final class Claims {
    final Ledger ledger;
    final HourCalendar calendar;
    final double[] needWh;
    final DarkSpell spell;
    final double windowWh;
    final LoadHours asked;
    double wholeWh, toldWh = -1.0;
    int from = -1, first = -1, last = -1, back = -1;

    Claims(Ledger ledger, double[] needWh, DarkSpell spell, LoadHours asked) {
      this.ledger = ledger;
      this.asked = asked;
      this.needWh = needWh;
      this.spell = spell;
      calendar = ledger.forcing().calendar();
      windowWh = ledger.windowWh();
    }

    void hold(Said said) {
      MET.add(said.key());
      holdWhose(said);
      List<String> v = read(said);
      String text = WORDS.say(said);
      switch (said.key()) {
        case "story.began.full" -> {
          from = hour(v.get(0), v.get(1)) + 1;
          assertTrue(charge(from - 1) >= 0.99 * windowWh, text);
        }
        case "story.began.part" -> {
          from = hour(v.get(0), v.get(1)) + 1;
          assertEquals(WORDS.percent(charge(from - 1) / windowWh), v.get(2), text);
          assertTrue(charge(from - 1) < 0.99 * windowWh, text);
        }
        case "story.began.books" -> {
          from = 0;
          assertEquals(date(v.get(0)), calendar.date(0), text);
          assertEquals(WORDS.percent(ledger.startChargeWh() / windowWh), v.get(1), text);
        }
        case "story.brought" -> {
          last = hour(v.get(0), v.get(1));
          assertTrue(ledger.isUnmet(last), text);
          double broughtWh = sum(ledger.forcing().solarBusWh(), from, last + 1);
          double neededWh = sum(needWh, from, last + 1);
          assertEquals(WORDS.days((last + 1 - from) / 24.0), v.get(2), text);
          assertEquals(WORDS.energy(broughtWh), v.get(3), text);
          assertEquals(WORDS.energy(neededWh), v.get(4), text);
          assertEquals(WORDS.percent(broughtWh / neededWh), v.get(5), text);
        }
        case "story.poorest" -> poorest(v, text);
        case "story.poorest.nothing" -> {
          int days = 0, firstDay = -1;
          for (int day = (from + 23) / 24 * 24; day < spell.toHour(); day += 24) {
            if (sum(ledger.forcing().solarBusWh(), day, day + 24) < 0.5) {
              firstDay = days == 0 ? day : firstDay;
              days++;
            }
          }
          assertEquals(WORDS.days(days), v.get(0), text);
          assertEquals(hour(v.get(1), "00:00"), firstDay, text);
        }
        case "story.snow" -> {
          double heldWh = 0.0;
          for (NamedHours loss : ledger.forcing().arrayLosses()) {
            heldWh += loss.name().startsWith("snow") ? sum(loss.wh(), from, last + 1) : 0.0;
          }
          assertEquals(WORDS.energy(heldWh), v.get(0), text);
        }
        case "story.other" ->
            assertEquals(energy(LedgerColumn.OTHER_AVAILABLE, from, spell.toHour()), v.get(0));
        case "story.generator" -> {
          int hours = 0;
          for (int h = from; h < spell.toHour(); h++) {
            hours += ledger.isGeneratorOn(h) ? 1 : 0;
          }
          assertEquals(WORDS.hours(hours), v.get(0), text);
          assertEquals(energy(LedgerColumn.GENERATOR, from, spell.toHour()), v.get(1), text);
        }
        case "story.shed" -> {
          wholeWh = sum(LedgerColumn.SHED.of(ledger), from, spell.toHour());
          assertEquals(WORDS.energy(wholeWh), v.get(0), text);
        }
        case "story.cut.loads", "story.shed.loads", "story.put_off.loads" -> loads(said, text);
        case "story.loads.others", "story.loads.unknown" ->
            toldWh += ((SaidValue.Energy) said.values().get(0)).wh();
        case "story.put_off" -> {
          wholeWh = sum(LedgerColumn.PUT_OFF.of(ledger), from, spell.toHour());
          assertEquals(WORDS.energy(wholeWh), v.get(0), text);
          assertEquals(energy(LedgerColumn.MADE_UP, from, spell.toHour()), v.get(1), text);
        }
        case "story.reserve" -> {
          first = hour(v.get(0), v.get(1));
          assertTrue(LedgerColumn.UNMET_EMPTY.of(ledger)[first] > 0.0, text);
          assertEquals(WORDS.days((first - from) / 24.0), v.get(2), text);
        }
        case "story.first" -> {
          first = hour(v.get(0), v.get(1));
          assertTrue(ledger.isUnmet(first), text);
          assertEquals(0.0, LedgerColumn.UNMET_EMPTY.of(ledger)[first], text);
        }
        case "story.locked" ->
            assertEquals(WORDS.percent(ledger.forcing().lockedShare()[first]), v.get(0), text);
        case "story.cut" -> {
          double wh = 0.0;
          int hours = 0;
          for (int h = from; h <= last; h++) {
            wh += ledger.unmetWh(h);
            hours += ledger.isUnmet(h) ? 1 : 0;
          }
          wholeWh = wh;
          assertEquals(WORDS.energy(wh), v.get(0), text);
          assertEquals(WORDS.hours(hours), v.get(1), text);
        }
        case "story.longest" -> {
          int longest = 0, run = 0;
          for (int h = from; h <= last; h++) {
            run = ledger.isUnmet(h) ? run + 1 : 0;
            longest = Math.max(longest, run);
          }
          assertEquals(WORDS.hours(longest), v.get(0), text);
        }
        case "story.reason.empty" -> reason(LedgerColumn.UNMET_EMPTY, v, text);
        case "story.reason.rate" -> reason(LedgerColumn.UNMET_RATE, v, text);
        case "story.reason.inverter" -> reason(LedgerColumn.UNMET_INVERTER, v, text);
        case "story.reason.cut_off" -> reason(LedgerColumn.UNMET_CUT_OFF, v, text);
        case "story.reason.slow" -> reason(LedgerColumn.UNMET_SLOW, v, text);
        case "story.reason.asleep" -> reason(LedgerColumn.UNMET_ASLEEP, v, text);
        case "story.recovered" -> {
          back = hour(v.get(0), v.get(1));
          assertTrue(charge(back) >= 0.5 * windowWh, text);
          int day = back / 24 * 24;
          assertEquals(
              WORDS.energy(sum(ledger.forcing().solarBusWh(), day, day + 24)), v.get(2), text);
          assertEquals(WORDS.energy(sum(needWh, day, day + 24)), v.get(3), text);
        }
        case "story.recovered.other" ->
            assertEquals(
                energy(LedgerColumn.OTHER_AVAILABLE, back / 24 * 24, back / 24 * 24 + 24),
                v.get(0));
        case "story.recovered.generator" ->
            assertEquals(
                energy(LedgerColumn.GENERATOR, back / 24 * 24, back / 24 * 24 + 24), v.get(0));
        case "story.not_recovered" -> {
          for (int h = last + 1; h < ledger.hours(); h++) {
            assertTrue(charge(h) < 0.5 * windowWh, text);
          }
          back = ledger.hours();
        }
        default -> fail("no one holds " + said.key());
      }
    }

    /** "First", "last", "came back": no hour in between says otherwise. */
    void holdTogether() {
      assertTrue(from >= 0 && first >= from && last >= first && back >= last);
      for (int h = from; h < first; h++) {
        assertFalse(ledger.isUnmet(h), "an hour before the first one");
        boolean isFullAgain = spell.isFullAtStart() && charge(h) >= 0.99 * windowWh;
        assertFalse(isFullAgain, "full after it was last full");
      }
      for (int h = last + 1; h < Math.min(back, ledger.hours()); h++) {
        assertFalse(ledger.isUnmet(h), "an hour after the last one");
        assertTrue(charge(h) < 0.5 * windowWh, "half full before it came back");
      }
      assertEquals(spell.fromHour(), from);
      assertEquals(Math.min(spell.toHour(), ledger.hours()), Math.min(back + 1, ledger.hours()));
    }

    void holdDay(Said said) {
      MET.add(said.key());
      List<String> v = read(said);
      int day = hour(v.get(0), "00:00");
      assertEquals(WORDS.energy(sum(ledger.forcing().solarBusWh(), day, day + 24)), v.get(1));
      assertEquals(WORDS.energy(sum(needWh, day, day + 24)), v.get(2));
      assertEquals(WORDS.percent(charge(day + 23) / windowWh), v.get(3));
      double wh = 0.0;
      int hours = 0;
      for (int h = day; h < day + 24; h++) {
        boolean isOfSpell = spell.holds(h, ledger.hours()); // two may share a day
        wh += isOfSpell ? ledger.unmetWh(h) : 0.0;
        hours += isOfSpell && ledger.isUnmet(h) ? 1 : 0;
      }
      assertEquals(said.key().equals("story.day.served"), hours == 0);
      if (hours > 0) {
        assertEquals(WORDS.energy(wh), v.get(4));
        assertEquals(WORDS.hours(hours), v.get(5));
      }
    }

    private void poorest(List<String> v, String text) {
      int told = hour(v.get(0), "00:00");
      double toldWh = sum(ledger.forcing().solarBusWh(), told, told + 24);
      assertEquals(WORDS.energy(toldWh), v.get(1), text);
      assertEquals(WORDS.percent(toldWh / sum(needWh, told, told + 24)), v.get(2), text);
      assertTrue(toldWh < sum(needWh, told, told + 24), text);
      for (int day = (from + 23) / 24 * 24; day < spell.toHour(); day += 24) {
        assertTrue(toldWh <= sum(ledger.forcing().solarBusWh(), day, day + 24) + 1e-9, text);
      }
    }

    /** No load lacked more than it asked for in the hours in which anything was cut. */
    private void loads(Said said, String text) {
      toldWh = 0.0;
      for (SaidValue.Amount load : ((SaidValue.Amounts) said.values().get(0)).amounts()) {
        assertTrue(text.contains(load.name() + " " + WORDS.energy(load.wh())), text);
        double mostWh = 0.0;
        for (int i = 0; i < asked.books().size(); i++) {
          double[] wh =
              asked.books().get(i).name().equals(load.name()) ? asked.wh(i) : new double[0];
          for (int h = from; h < spell.toHour() && wh.length > 0; h++) {
            double cutWh =
                ledger.unmetWh(h)
                    + LedgerColumn.SHED.of(ledger)[h]
                    + LedgerColumn.PUT_OFF.of(ledger)[h];
            mostWh += Math.min(wh[h], cutWh);
          }
        }
        assertTrue(load.wh() <= mostWh + 1e-3, text);
        toldWh += load.wh();
      }
    }

    /** Named, others and unknown are the whole that was told before them. */
    void holdWhose(Said next) {
      boolean isOver = toldWh >= 0.0 && !next.key().startsWith("story.loads.");
      if (isOver) {
        assertEquals(wholeWh, toldWh, 2.0, next.key());
        toldWh = -1.0;
      }
    }

    private void reason(LedgerColumn column, List<String> v, String text) {
      assertEquals(energy(column, from, last + 1), v.get(0), text);
    }

    private String energy(LedgerColumn column, int begin, int end) {
      return WORDS.energy(sum(column.of(ledger), begin, end));
    }

    private double charge(int hour) {
      return ledger.chargeWh()[hour];
    }

    private static double sum(double[] wh, int begin, int end) {
      double sum = 0.0;
      for (int h = begin; h < end; h++) {
        sum += wh[h];
      }
      return sum;
    }

    private int hour(String date, String clock) {
      LocalDate day = date(date);
      return calendar.hourOf(
          day.getYear(),
          day.getMonthValue(),
          day.getDayOfMonth(),
          Integer.parseInt(clock.substring(0, 2)));
    }

    private static LocalDate date(String text) {
      return LocalDate.parse(text, DATE);
    }

    /** The values as they stand in the printed sentence, by the numbers of their places. */
    private static List<String> read(Said said) {
      String pattern = WORDS.pattern(said.key());
      var order = new ArrayList<Integer>();
      var regex = new StringBuilder();
      Matcher places = Pattern.compile("\\{(\\d+)}").matcher(pattern);
      int at = 0;
      while (places.find()) {
        regex.append(Pattern.quote(pattern.substring(at, places.start()))).append("(.+?)");
        order.add(Integer.parseInt(places.group(1)));
        at = places.end();
      }
      regex.append(Pattern.quote(pattern.substring(at)));
      String text = WORDS.say(said);
      Matcher matcher = Pattern.compile(regex.toString()).matcher(text);
      assertTrue(matcher.matches(), text);
      var values = new ArrayList<String>();
      for (int i = 0; i < order.size(); i++) {
        values.add("");
      }
      for (int i = 0; i < order.size(); i++) {
        values.set(order.get(i), matcher.group(i + 1));
      }
      return values;
    }
  }
}
