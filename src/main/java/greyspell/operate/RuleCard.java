package greyspell.operate;

import greyspell.scenario.Scenario;
import java.util.List;

/**
 * Rules that were found on some winters and tried on others.
 *
 * @param rules in the order in which they are added; empty if none is worth its price
 * @param learnt winters on which they were found
 * @param tried winters on which they were not
 * @param medical whether a load is medical: then no rule is enough
 */
public record RuleCard(
    Scenario home, List<Told> rules, List<String> learnt, List<String> tried, boolean medical) {
  public RuleCard {
    rules = List.copyOf(rules);
    learnt = List.copyOf(learnt);
    tried = List.copyOf(tried);
  }

  /** Whether litres are told. */
  public boolean hasGenerator() {
    return home.generator() != null;
  }

  /**
   * A rule beside those before it.
   *
   * @param learnt on the winters on which it was found
   * @param tried on the others: what it is worth
   */
  public record Told(Rule rule, Price learnt, Price tried) {}

  /**
   * What this rule and those before it do in an average winter, against none.
   *
   * @param unmetWh not served without any rule
   * @param unmetWithWh not served with them
   * @param unmetHours without any rule
   * @param withUnmetHours with them
   * @param givenUpWh what was left off by rule
   * @param rulesDays on which something was left off
   * @param fuelL burnt without any rule, 0 where there is no generator
   * @param fuelWithL with them
   */
  public record Price(
      double unmetWh,
      double unmetWithWh,
      double unmetHours,
      double withUnmetHours,
      double givenUpWh,
      double rulesDays,
      double fuelL,
      double fuelWithL) {
    public double avoidedWh() {
      return unmetWh - unmetWithWh;
    }

    /** Given up for each kWh of outage avoided; 0 where none is. */
    public double givenUpPerAvoidedFactor() {
      return avoidedWh() > 0.0 ? givenUpWh / avoidedWh() : 0.0;
    }
  }
}
