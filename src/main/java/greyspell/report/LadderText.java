package greyspell.report;

import greyspell.chart.Say;
import greyspell.ladder.Bar;
import greyspell.ladder.Ladder;
import greyspell.ladder.Rung;
import greyspell.ladder.Step;
import greyspell.ladder.Tried;
import greyspell.outcome.Outcome.WinterBooks;
import greyspell.quantity.Show;
import greyspell.scenario.Scenario.Costs;
import greyspell.sizing.LifeCycleCost;
import greyspell.study.BankLife;
import greyspell.study.Trial;
import java.util.ArrayList;
import java.util.List;

/** The ladder in words, for the terminal. */
public final class LadderText {
  private static final int FEW_WINTERS = 5;

  private final Ladder ladder;
  private final Costs costs;
  private final StringBuilder out = new StringBuilder();

  private LadderText(Ladder ladder) {
    this.ladder = ladder;
    costs = ladder.present().scenario().costs();
  }

  public static String of(Ladder ladder) {
    var text = new LadderText(ladder);
    text.head();
    text.free();
    text.bought();
    text.beside();
    text.years();
    text.bars();
    text.foot();
    return text.out.toString();
  }

  private void head() {
    Trial now = ladder.present();
    out.append(now.scenario().name()).append(": what to do or buy next\n\n");
    Columns.wrap(out, "Now: ", state(now) + ".");
    if (!ladder.rungs().isEmpty()) {
      Double once = ladder.onceCost();
      Columns.wrap(
          out,
          "At the top of the ladder: ",
          state(ladder.top())
              + (once == null || once == 0.0 ? "" : "; all of it costs " + money(once))
              + ".");
    }
    out.append('\n');
  }

  /** "56 unmet hours and 12.3 kWh a year, 2 of 2 winters dark". */
  static String state(Trial trial) {
    var parts = new ArrayList<String>();
    parts.add(
        Say.count((int) Math.round(trial.unmet().unmetHours()), "unmet hour", "unmet hours")
            + " and "
            + Say.kwh(trial.unmet().wh())
            + " unserved in an average year");
    parts.add(
        trial.darkWinters()
            + " of "
            + Say.count(trial.winters().size(), "winter", "winters")
            + " with hours unmet");
    if (trial.unmet().generatorWh() > 0.0) {
      parts.add(
          "the generator runs "
              + Say.hours((int) Math.round(trial.generatorHours()))
              + " a year on "
              + Say.number(trial.fuelL(), 0)
              + " litres");
    }
    return String.join("; ", parts);
  }

  private void free() {
    List<Rung> free =
        ladder.rungs().stream().filter(r -> r.tried().step().kind().isFree()).toList();
    out.append("Costs nothing\n");
    if (free.isEmpty()) {
      out.append("  Nothing that this list knows would help here.\n");
    }
    free.forEach(this::rung);
    if (!ladder.idle().isEmpty()) {
      Columns.wrap(
          out,
          "  No gain here, or only for more dark hours: ",
          String.join("; ", ladder.idle().stream().map(Step::words).toList()) + ".");
    }
    if (ladder.standbyWh() >= 100.0) {
      Columns.wrap(
          out,
          "  ",
          "The system's own always-on draw, the inverter's first, accounts for "
              + Say.kwh(ladder.standbyWh())
              + " of what the sun does not bring in a year. No step here changes it: an inverter that sleeps, or a smaller one, would.");
    }
    out.append('\n');
  }

  private void bought() {
    List<Rung> bought =
        ladder.rungs().stream().filter(r -> !r.tried().step().kind().isFree()).toList();
    out.append("Then, one step after another\n");
    bought.forEach(this::rung);
    Columns.wrap(out, "  ", ladder.end());
    if (ladder.fuelCostPerKwh() != null) {
      Columns.wrap(
          out,
          "  ",
          "A kWh from the generator costs "
              + money(ladder.fuelCostPerKwh())
              + " in fuel"
              + (costs.perGeneratorHourCost() == null ? "" : " and wear")
              + ".");
    }
    out.append('\n');
  }

  private void rung(Rung rung) {
    Tried t = rung.tried();
    int number = ladder.rungs().indexOf(rung) + 1;
    Columns.wrap(
        out,
        String.format(java.util.Locale.ROOT, "%3d. ", number),
        t.step().words() + price(t.step()));
    Columns.wrap(out, "     ", change(t) + cost(rung) + ".");
    if (!rung.ties().isEmpty()) {
      Columns.wrap(
          out,
          "     ",
          "A tie within the spread of the winters: " + String.join("; ", rung.ties()) + ".");
    }
    if (!t.wires().isEmpty()) {
      Columns.wrap(
          out,
          "     ",
          "The wires as stated cannot bear it ("
              + t.wires()
              + "): others come on top of the price, with losses of their own.");
    }
    if (isFirstOfItsKind(rung)) {
      for (String turn : TurnText.of(rung, costs)) {
        Columns.wrap(out, "     ", turn);
      }
    }
  }

  /** Where a kind is taken again the order turns at much the same prices. */
  private boolean isFirstOfItsKind(Rung rung) {
    int at = ladder.rungs().indexOf(rung);
    return at == 0
        || ladder.rungs().get(at - 1).tried().step().kind() != rung.tried().step().kind();
  }

  private String price(Step step) {
    Double once = step.onceCost();
    return step.kind().isFree() || once == null ? "." : ": " + money(once) + ".";
  }

  private String change(Tried t) {
    var parts = new ArrayList<String>();
    parts.add(
        "Unmet hours a year "
            + Say.number(t.before().unmet().unmetHours(), 0)
            + " -> "
            + Say.number(t.after().unmet().unmetHours(), 0)
            + band(t.after()));
    parts.add(
        "unserved "
            + Say.kwhNumber(t.before().unmet().wh())
            + " -> "
            + Say.kwh(t.after().unmet().wh()));
    if (t.before().unmet().generatorWh() + t.after().unmet().generatorWh() > 0.0) {
      parts.add(
          "generator hours "
              + Say.number(t.before().generatorHours(), 0)
              + " -> "
              + Say.number(t.after().generatorHours(), 0)
              + ", litres "
              + Say.number(t.before().fuelL(), 0)
              + " -> "
              + Say.number(t.after().fuelL(), 0));
    }
    return String.join("; ", parts);
  }

  /** " (winters 12 to 96)": the whole range of few winters, else the middle eight tenths. */
  private static String band(Trial trial) {
    int[] hours =
        trial.winters().stream()
            .map(WinterBooks::figures)
            .mapToInt(f -> f.unmetHours())
            .sorted()
            .toArray();
    if (hours.length < 2) {
      return "";
    }
    boolean isFew = hours.length < FEW_WINTERS;
    int low = isFew ? hours[0] : hours[(int) Math.round(0.1 * (hours.length - 1))];
    int high = isFew ? hours[hours.length - 1] : hours[(int) Math.round(0.9 * (hours.length - 1))];
    return (isFew ? " (winters " : " (8 of 10 winters ")
        + Say.number(low, 0)
        + " to "
        + Say.number(high, 0)
        + ")";
  }

  private String cost(Rung rung) {
    Double perKwh = rung.costPerKwh(), perHour = rung.costPerUnmetHour();
    if (perKwh == null || rung.tried().step().kind().isFree()) {
      return "";
    }
    return "; "
        + money(perKwh)
        + " for each kWh avoided"
        + (perHour == null ? "" : ", " + money(perHour) + " for each unmet hour avoided");
  }

  private void beside() {
    if (!ladder.unpriced().isEmpty()) {
      out.append("Has no price in the scenario\n");
      for (Tried t : ladder.unpriced()) {
        Columns.wrap(
            out,
            "  - ",
            t.step().words()
                + ". "
                + change(t)
                + (t.wires().isEmpty()
                    ? "."
                    : "; the wires as stated cannot bear it (" + t.wires() + ")."));
      }
      Columns.wrap(
          out,
          "  ",
          "State " + String.join(", ", ladder.missingPrices()) + " to have them ranked.");
      out.append('\n');
    }
    if (!ladder.refused().isEmpty()) {
      out.append("Cannot be built so\n");
      for (Ladder.Refused r : ladder.refused()) {
        Columns.wrap(out, "  - ", r.step().words() + ": " + r.reason() + ".");
      }
      out.append('\n');
    }
  }

  private void years() {
    LifeCycleCost now = ladder.presentCost(), top = ladder.topCost();
    out.append("Over ").append(costs.years()).append(" years");
    out.append(" at a discount rate of ").append(Show.percent(costs.discountFraction()));
    out.append('\n');
    Columns.wrap(out, "  ", lives());
    if (now == null || top == null) {
      Columns.wrap(
          out,
          "  ",
          "What it all costs needs costs.per_pack, and with a generator the price of its fuel.");
    } else {
      var table = new Columns();
      table.row("", "now", "top of the ladder");
      row(table, "steps", now.onceCost(), top.onceCost());
      row(table, "new banks", now.replacementCost(), top.replacementCost());
      row(table, "fuel", now.fuelCost(), top.fuelCost());
      row(table, "wear of the generator", now.wearCost(), top.wearCost());
      row(table, "upkeep", now.upkeepCost(), top.upkeepCost());
      row(table, "together", now.totalCost(), top.totalCost());
      table.write(out, false);
    }
    out.append('\n');
  }

  private String lives() {
    BankLife now = ladder.presentLife(), top = ladder.topLife();
    String words = "The bank " + left(now) + ".";
    if (!top.equals(now)) {
      words += " The one at the top " + left(top) + ".";
    }
    return ladder.present().scenario().bank().healthShare() == 1.0
        ? words
        : words
            + " It has served already: a new one like it "
            + (now.newYears() == null ? "outlasts these years" : "lasts " + years(now.newYears()))
            + "; a pack added to it counts as worn as the rest.";
  }

  private static String left(BankLife life) {
    Double years = life.leftYears();
    return years == null
        ? "outlasts them"
        : years <= 0.0
            ? "is worn: it is due for replacement now"
            : "is due for replacement after " + years(years);
  }

  private static String years(double years) {
    return Show.number(years, 1) + " years";
  }

  private void row(Columns table, String what, double now, double top) {
    if (now != 0.0 || top != 0.0) {
      table.row(what, now == 0.0 ? "-" : money(now), top == 0.0 ? "-" : money(top));
    }
  }

  private void bars() {
    out.append("What moves the answer most (kWh unserved or from the generator, a year)\n");
    List<Bar> moving = ladder.bars().stream().filter(bar -> bar.widthWh() > 0.0).toList();
    if (moving.isEmpty()) {
      out.append("  Nothing that was tried moves it.\n");
    } else {
      table(moving);
    }
    for (Bar bar : ladder.bars()) {
      if (!bar.firstLow().equals(bar.firstHigh())) {
        Columns.wrap(
            out,
            "  - ",
            "The first buy hangs on "
                + bar.what()
                + ": "
                + bar.lowWords()
                + ": "
                + none(bar.firstLow())
                + "; "
                + bar.highWords()
                + ": "
                + none(bar.firstHigh())
                + ".");
      }
    }
    out.append('\n');
  }

  private void table(List<Bar> moving) {
    var table = new Columns();
    table.row("from", "to", "assumption");
    for (Bar bar : moving) {
      table.row(
          Say.kwhNumber(bar.low().wh() + bar.low().generatorWh()),
          Say.kwhNumber(bar.high().wh() + bar.high().generatorWh()),
          bar.what() + ": " + bar.lowWords() + " to " + bar.highWords());
    }
    table.write(out, true);
  }

  private static String none(String first) {
    return first.isEmpty() ? "nothing" : first;
  }

  private void foot() {
    int whole = ladder.present().winters().size();
    if (whole < ladder.years()) {
      Columns.wrap(
          out,
          "",
          "Figures a year are over all "
              + ladder.years()
              + " years of the weather; "
              + Say.count(whole, "winter is", "winters are")
              + " whole in it, and only "
              + (whole == 1 ? "that one is" : "these are")
              + " counted as winters.");
    }
    Columns.wrap(
        out,
        "",
        "Each figure is that of 'run' on the changed scenario. Energy estimate only, no electrical design:"
            + " strings, wires, protection and the roof are for licensed people and local code; a"
            + " generator runs outdoors only, away from every opening.");
  }

  private String money(double cost) {
    return Show.money(costs.currency(), cost);
  }
}
