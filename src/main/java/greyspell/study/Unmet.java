package greyspell.study;

import greyspell.balance.Ledger;

/**
 * What a run leaves unserved, as an average year.
 *
 * @param wh a year
 * @param unmetHours a year in which something was not served
 * @param letGoWh a year let go by rule
 * @param generatorWh a year from the generator
 */
public record Unmet(double wh, double unmetHours, double letGoWh, double generatorWh) {
  static Unmet of(Ledger ledger) {
    double sumWh = 0.0, letGoWh = 0.0, generatorWh = 0.0;
    int count = 0;
    for (int h = 0; h < ledger.hours(); h++) {
      double unmetWh = ledger.unmetWh(h);
      sumWh += unmetWh;
      count += ledger.isUnmet(h) ? 1 : 0;
      letGoWh += ledger.letGoWh(h);
      generatorWh += ledger.generatorWh(h);
    }
    double years = ledger.forcing().calendar().years();
    return new Unmet(sumWh / years, count / years, letGoWh / years, generatorWh / years);
  }
}
