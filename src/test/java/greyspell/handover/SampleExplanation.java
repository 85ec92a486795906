package greyspell.handover;

import greyspell.balance.BusNeed;
import greyspell.calendar.HourCalendar;
import greyspell.cause.DarkSpell;
import greyspell.cause.DarkSpells;
import greyspell.cause.Said;
import greyspell.cause.SaidValue.Name;
import greyspell.chart.MonthSums;
import greyspell.outcome.Outcome.WinterBooks;
import greyspell.power.InverterCurve;
import greyspell.study.Explanation;
import greyspell.study.Explanation.Kind;
import greyspell.study.Explanation.MonthLine;
import greyspell.study.Explanation.Part;
import greyspell.study.Explanation.Remedy;
import greyspell.study.Explanation.Shares;
import greyspell.study.Explanation.Spell;
import greyspell.study.Explanation.Verdict;
import greyspell.study.Explanation.WinterLine;
import greyspell.study.StudyResult;
import greyspell.study.WinterCause;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** An explanation with the figures of a run and causes that are made up, for tests of the pages. */
final class SampleExplanation {
  private SampleExplanation() {}

  static Explanation of(StudyResult result) {
    HourCalendar calendar = result.ledger().forcing().calendar();
    var winters = new ArrayList<WinterLine>();
    int dark = 0;
    for (WinterBooks w : result.outcome().winters()) {
      if (w.winter().isWhole()) {
        var f = w.figures();
        dark += f.unmetHours() > 0 ? 1 : 0;
        winters.add(
            new WinterLine(
                w.winter().name(),
                0,
                f.loadWh(),
                f.unmetWh(),
                f.unmetHours(),
                f.unmetDays(),
                f.beyond().shedWh(),
                f.lowestChargeWh() / result.outcome().usableBankWh(),
                f.beyond().generatorHours(),
                1,
                null));
      }
    }
    var total = result.outcome().total();
    double years = calendar.years();
    Shares shares = total.unmetWh() > 0.0 ? shares(total.unmetWh()) : null;
    var remedy =
        new Remedy(Kind.PANELS, Said.of("client.no_spell"), Said.of("effect.prevents.all"), List.of(), true, false, 0.0, 0.0, 0);
    var free =
        new Remedy(Kind.CLEAN, Said.of("operator.3"), Said.of("effect.prevents.spell"), List.of(), false, true, 100.0, 2.0, 1);
    return new Explanation(
        result.scenario(),
        Said.of("weather.note"),
        new Verdict(
            Said.of("site.horizon.highest", new Name("12")),
            winters.size(),
            dark,
            total.unmetWh() / years,
            total.unmetHours() / years,
            dark == 0 ? 0.6 : null),
        winters,
        months(result),
        spells(result),
        shares,
        List.of(remedy),
        List.of(free),
        List.of(),
        List.of());
  }

  private static Shares shares(double wholeWh) {
    return new Shares(
        wholeWh,
        List.of(
            part(WinterCause.USUAL_CLOUD, wholeWh, 0.5),
            part(WinterCause.SHORT_DAYS, wholeWh, 0.25),
            part(WinterCause.STANDBY, wholeWh, 0.2),
            part(WinterCause.SOILING, wholeWh, 0.05)),
        0.0,
        true,
        16);
  }

  private static Part part(WinterCause cause, double wholeWh, double share) {
    return new Part(cause, wholeWh * share, 0.0, share, wholeWh * share, List.of());
  }

  private static List<MonthLine> months(StudyResult result) {
    var months = new ArrayList<MonthLine>();
    for (var m : MonthSums.of(result.ledger(), result.scenario().site().isNorthern())) {
      months.add(
          new MonthLine(
              m.month(), m.sunWh(), m.otherWh(), m.needWh(), m.curtailedWh(), m.unmetWh()));
    }
    months.sort(Comparator.comparingInt(MonthLine::month));
    return months;
  }

  private static List<Spell> spells(StudyResult result) {
    double[] needWh =
        BusNeed.wh(
            result.ledger().forcing(), InverterCurve.fit(result.scenario().inverter()).limits());
    var spells = new ArrayList<Spell>();
    for (DarkSpell dark : DarkSpells.of(result.ledger(), needWh)) {
      spells.add(
          new Spell("2021/22", 0, dark, shares(dark.unmetWh()), List.of(Said.of("operator.1")), List.of(), List.of()));
    }
    spells.sort(Comparator.comparingDouble((Spell s) -> s.spell().unmetWh()).reversed());
    return spells;
  }
}
