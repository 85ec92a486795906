package greyspell.cause;

import greyspell.balance.Ledger;
import greyspell.balance.LedgerColumn;
import greyspell.balance.NamedHours;
import greyspell.calendar.HourCalendar;
import greyspell.cause.SaidValue.Amounts;
import greyspell.cause.SaidValue.Clock;
import greyspell.cause.SaidValue.Day;
import greyspell.cause.SaidValue.Days;
import greyspell.cause.SaidValue.Energy;
import greyspell.cause.SaidValue.Hours;
import greyspell.cause.SaidValue.Percent;
import java.util.ArrayList;
import java.util.List;

/**
 * Tells a dark spell from the books, in order of time. Each sentence carries only what the ledger
 * holds; StoryClaimsTest reads every one of them and works its numbers out again.
 */
public final class SpellStory {
  /** What keeps energy from being served, each with its sentence. */
  private record Reason(LedgerColumn column, String key) {}

  private static final List<Reason> REASONS =
      List.of(
          new Reason(LedgerColumn.UNMET_EMPTY, "story.reason.empty"),
          new Reason(LedgerColumn.UNMET_RATE, "story.reason.rate"),
          new Reason(LedgerColumn.UNMET_INVERTER, "story.reason.inverter"),
          new Reason(LedgerColumn.UNMET_CUT_OFF, "story.reason.cut_off"),
          new Reason(LedgerColumn.UNMET_SLOW, "story.reason.slow"),
          new Reason(LedgerColumn.UNMET_ASLEEP, "story.reason.asleep"));

  private static final double LEAST_TOLD_WH = 0.5;
  private static final double LEAST_LOCKED_SHARE = 0.005;
  private static final double LEAST_SNOW_SHARE = 0.01;
  private static final String SNOW = "snow";
  private static final int LOADS_NAMED = 5;

  private final DarkSpell spell;
  private final Ledger ledger;
  private final double[] needWh;
  private final CutLoads loads;
  private final boolean isDated;
  private final HourCalendar calendar;
  private final List<Said> said = new ArrayList<>();

  private SpellStory(
      DarkSpell spell, Ledger ledger, double[] needWh, CutLoads loads, boolean isDated) {
    this.spell = spell;
    this.loads = loads;
    this.ledger = ledger;
    this.needWh = needWh;
    this.isDated = isDated;
    calendar = ledger.forcing().calendar();
  }

  /**
   * The story.
   *
   * @param needWh of each hour on the bus
   * @param loads of the house, to say which of them went without
   * @param isDated whether the years are real ones
   */
  public static List<Said> of(
      DarkSpell spell, Ledger ledger, double[] needWh, CutLoads loads, boolean isDated) {
    var story = new SpellStory(spell, ledger, needWh, loads, isDated);
    story.began();
    story.brought();
    story.poorest();
    story.snow();
    story.eased();
    story.reserve();
    story.cut();
    story.recovered();
    return List.copyOf(story.said);
  }

  /** One sentence for each day. */
  public static List<Said> days(DarkSpell spell, boolean isDated) {
    var lines = new ArrayList<Said>();
    for (SpellDay day : spell.days()) {
      boolean isServed = day.unmetHours() == 0;
      var date = new Day(day.date(), isDated);
      var solar = new Energy(day.solarBusWh());
      var need = new Energy(day.needWh());
      var end = new Percent(day.endChargeShare());
      lines.add(
          isServed
              ? Said.of("story.day.served", date, solar, need, end)
              : Said.of(
                  "story.day.unserved",
                  date,
                  solar,
                  need,
                  end,
                  new Energy(day.unmetWh()),
                  new Hours(day.unmetHours())));
    }
    return List.copyOf(lines);
  }

  private void began() {
    int from = spell.fromHour();
    var share = new Percent(spell.startChargeShare());
    if (from == 0) {
      said.add(Said.of("story.began.books", day(0), share));
    } else if (spell.isFullAtStart()) {
      said.add(Said.of("story.began.full", day(from - 1), clock(from - 1)));
    } else {
      said.add(Said.of("story.began.part", day(from - 1), clock(from - 1), share));
    }
  }

  /** From the hour of the beginning to the last one that was not served. */
  private void brought() {
    int from = spell.fromHour(), to = spell.lastUnmetHour() + 1;
    double broughtWh = sum(ledger.forcing().solarBusWh(), from, to);
    double neededWh = sum(needWh, from, to);
    said.add(
        Said.of(
            "story.brought",
            day(to - 1),
            clock(to - 1),
            new Days((to - from) / 24.0),
            new Energy(broughtWh),
            new Energy(neededWh),
            new Percent(neededWh > 0.0 ? broughtWh / neededWh : 0.0)));
  }

  /**
   * Snow on the panels makes a poor day as well as cloud does, so it is not called a dark one. Told
   * only of a day that brought less than the house needed, and where many brought nothing, how many
   * they were.
   */
  private void poorest() {
    List<SpellDay> days = wholeDays();
    SpellDay poorest = days.get(0);
    int empty = 0;
    for (SpellDay day : days) {
      poorest = day.solarBusWh() < poorest.solarBusWh() ? day : poorest;
      empty += day.solarBusWh() < LEAST_TOLD_WH ? 1 : 0;
    }
    var date = new Day(poorest.date(), isDated);
    if (empty > 1) {
      said.add(Said.of("story.poorest.nothing", new Days(empty), date));
    } else if (poorest.solarBusWh() < poorest.needWh()) {
      said.add(
          Said.of(
              "story.poorest",
              date,
              new Energy(poorest.solarBusWh()),
              new Percent(poorest.solarBusWh() / poorest.needWh())));
    }
  }

  /** From the beginning to the last hour that was not served; where it matters. */
  private void snow() {
    int from = spell.fromHour(), to = spell.lastUnmetHour() + 1;
    double heldWh = 0.0;
    for (NamedHours loss : ledger.forcing().arrayLosses()) {
      heldWh += loss.name().equals(SNOW) ? sum(loss.wh(), from, to) : 0.0;
    }
    if (heldWh >= LEAST_SNOW_SHARE * sum(needWh, from, to)) {
      said.add(Said.of("story.snow", new Energy(heldWh)));
    }
  }

  /** Those that lie in the spell from midnight on; the first, if there is no other. */
  private List<SpellDay> wholeDays() {
    List<SpellDay> days = spell.days();
    boolean isFirstIn = spell.fromHour() % 24 == 0 || days.size() == 1;
    return isFirstIn ? days : days.subList(1, days.size());
  }

  /** What else fed the house, and what was let go or put off by rule, from beginning to end. */
  private void eased() {
    int from = spell.fromHour(), to = spell.toHour();
    double otherWh = sum(LedgerColumn.OTHER_AVAILABLE, from, to);
    if (otherWh >= LEAST_TOLD_WH) {
      said.add(Said.of("story.other", new Energy(otherWh)));
    }
    int hours = 0;
    for (int h = from; h < to; h++) {
      hours += ledger.isGeneratorOn(h % ledger.hours()) ? 1 : 0;
    }
    if (hours > 0) {
      double givenWh = sum(LedgerColumn.GENERATOR, from, to);
      said.add(Said.of("story.generator", new Hours(hours), new Energy(givenWh)));
    }
    double shedWh = sum(LedgerColumn.SHED, from, to);
    if (shedWh >= LEAST_TOLD_WH) {
      said.add(Said.of("story.shed", new Energy(shedWh)));
      whose("story.shed.loads", loads.letGo(from, to, LOADS_NAMED));
    }
    double putOffWh = sum(LedgerColumn.PUT_OFF, from, to);
    if (putOffWh >= LEAST_TOLD_WH) {
      said.add(
          Said.of(
              "story.put_off",
              new Energy(putOffWh),
              new Energy(sum(LedgerColumn.MADE_UP, from, to))));
      whose("story.put_off.loads", loads.putOff(from, to, LOADS_NAMED));
    }
  }

  private void whose(String key, CutLoads.Cut cut) {
    List<SaidValue.Amount> told =
        cut.named().stream().filter(a -> a.wh() >= LEAST_TOLD_WH).toList();
    if (!told.isEmpty()) {
      said.add(Said.of(key, new Amounts(told)));
    }
    double othersWh = cut.othersWh();
    for (SaidValue.Amount amount : cut.named()) {
      othersWh += told.contains(amount) ? 0.0 : amount.wh();
    }
    if (othersWh >= LEAST_TOLD_WH && !told.isEmpty()) {
      said.add(Said.of("story.loads.others", new Energy(othersWh)));
    }
    if (cut.unknownWh() >= LEAST_TOLD_WH) {
      said.add(Said.of("story.loads.unknown", new Energy(cut.unknownWh())));
    }
  }

  private void reserve() {
    int first = spell.firstUnmetHour();
    double[] emptyWh = LedgerColumn.UNMET_EMPTY.of(ledger);
    if (!(emptyWh[first % ledger.hours()] > 0.0)) {
      said.add(Said.of("story.first", day(first), clock(first)));
      return;
    }
    said.add(
        Said.of(
            "story.reserve",
            day(first),
            clock(first),
            new Days((first - spell.fromHour()) / 24.0)));
    double locked = ledger.forcing().lockedShare()[first % ledger.hours()];
    if (locked >= LEAST_LOCKED_SHARE) {
      said.add(Said.of("story.locked", new Percent(locked)));
    }
  }

  private CutLoads.Cut lacked(int mostNamed) {
    return loads.unserved(spell.firstUnmetHour(), spell.lastUnmetHour() + 1, mostNamed);
  }

  private void cut() {
    said.add(Said.of("story.cut", new Energy(spell.unmetWh()), new Hours(spell.unmetHours())));
    int longest = 0, run = 0;
    for (int h = spell.firstUnmetHour(); h <= spell.lastUnmetHour(); h++) {
      run = ledger.isUnmet(h % ledger.hours()) ? run + 1 : 0;
      longest = Math.max(longest, run);
    }
    if (longest < spell.unmetHours()) {
      said.add(Said.of("story.longest", new Hours(longest)));
    }
    whose("story.cut.loads", lacked(LOADS_NAMED));
    for (Reason reason : REASONS) {
      double wh = sum(reason.column, spell.firstUnmetHour(), spell.lastUnmetHour() + 1);
      boolean isAll = spell.unmetWh() - wh < LEAST_TOLD_WH;
      if (wh >= LEAST_TOLD_WH && !(isAll && reason.column == LedgerColumn.UNMET_EMPTY)) {
        said.add(Said.of(reason.key, new Energy(wh)));
      }
    }
  }

  private void recovered() {
    if (!spell.isRecovered()) {
      said.add(Said.of("story.not_recovered"));
      return;
    }
    int last = spell.toHour() - 1;
    SpellDay day = spell.days().get(spell.days().size() - 1);
    said.add(
        Said.of(
            "story.recovered",
            day(last),
            clock(last),
            new Energy(day.solarBusWh()),
            new Energy(day.needWh())));
    if (day.otherWh() >= LEAST_TOLD_WH) {
      said.add(Said.of("story.recovered.other", new Energy(day.otherWh())));
    }
    if (day.generatorWh() >= LEAST_TOLD_WH) {
      said.add(Said.of("story.recovered.generator", new Energy(day.generatorWh())));
    }
  }

  private Day day(int hour) {
    return new Day(calendar.date(hour % ledger.hours()), isDated);
  }

  private static Clock clock(int hour) {
    return new Clock(hour % 24);
  }

  private double sum(LedgerColumn column, int from, int to) {
    return sum(column.of(ledger), from, to);
  }

  private double sum(double[] wh, int from, int to) {
    double sum = 0.0;
    for (int h = from; h < to; h++) {
      sum += wh[h % ledger.hours()];
    }
    return sum;
  }
}
