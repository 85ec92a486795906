package greyspell.report;

import greyspell.cause.Said;
import greyspell.study.Explanation.Cost;
import greyspell.study.Explanation.Remedy;
import greyspell.words.Words;
import java.util.ArrayList;
import java.util.List;

/** A sentence on what a change costs, by prices that the scenario states, and on its wires. */
public final class RemedyCost {
  private RemedyCost() {}

  /**
   * Told and what has to be bought for it; told alone where nothing of that has a price.
   *
   * @param currency the user's own text, may be empty
   */
  public static String after(String told, Cost cost, String currency, Words words) {
    if (cost.onceCost() == 0.0) {
      return told;
    }
    String number = words.number(cost.onceCost(), 0);
    return words.say(
        cost.unpriced().isEmpty() ? "remedy.costs" : "remedy.costs.over",
        told,
        currency.isEmpty() ? number : currency + " " + number);
  }

  /** Told and which wires it asks to be thicker; told alone where they bear it. */
  public static String withWires(String told, List<String> wires, Words words) {
    if (wires.isEmpty()) {
      return told;
    }
    var names = new ArrayList<String>();
    for (String wire : wires) {
      String own = words.translated(wire);
      names.add(own == null ? wire : own);
    }
    return words.say("remedy.wires", told, String.join("; ", names));
  }

  /** Told and how long a generator that is enough runs a year; told alone for any other change. */
  public static String withRunning(String told, Remedy remedy, Words words) {
    return remedy.effect().key().equals("effect.generator.prevents.all")
        ? told + " " + words.say(new Said("remedy.runs", remedy.effect().values()))
        : told;
  }
}
