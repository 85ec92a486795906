package greyspell.study;

import greyspell.cause.DarkSpell;
import greyspell.cause.ShapleyShares;
import greyspell.study.Explanation.Part;
import greyspell.study.Explanation.Shares;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Shares the energy that was not served among its causes: the home is run through all of its hours
 * once for each set of causes left out, and what then goes unserved within each stretch of hours is
 * read. A first screen, one cause at a time, picks those that matter; all others are one cause
 * together.
 */
final class CauseRuns {
  private static final double LEAST_SHARE = 0.01;
  private static final int PAIRS = 20; // of orders: about as many runs as eight causes in full
  private static final long SEED = 20;

  private final Trials trials;
  private final List<Stretches> parts;
  private final List<WinterCause> causes = new ArrayList<>();
  private final List<WinterCause> smaller = new ArrayList<>();
  private final List<ShapleyShares> shared = new ArrayList<>();
  private final List<Map<WinterCause, double[]>> withoutOne = new ArrayList<>();
  private boolean isExact;
  private int screenRuns;

  /**
   * What is asked of one part of the weather: the energy unserved within each stretch.
   *
   * @param part in {@link Trials}
   * @param startWh the charge at which the home's own books begin
   * @param stretches spells and winters; unmet hours outside all of them are of the whole only
   */
  record Stretches(int part, double startWh, List<Stretch> stretches) {
    Stretches {
      stretches = List.copyOf(stretches);
    }
  }

  /** Hours of one part, the second past the last; may run over the end of a year that is a ring. */
  record Stretch(int fromHour, int toHour) {
    static Stretch of(DarkSpell spell) {
      return new Stretch(spell.fromHour(), spell.toHour());
    }

    /** Of what is unmet in each hour of the part. */
    double sumWh(double[] unmetWh) {
      double sumWh = 0.0;
      for (int h = fromHour; h < toHour; h++) {
        sumWh += unmetWh[h < unmetWh.length ? h : h % unmetWh.length];
      }
      return sumWh;
    }
  }

  private CauseRuns(Trials trials, List<Stretches> parts) {
    this.trials = trials;
    this.parts = parts;
  }

  /**
   * Of the home that the trials are of; parts of the weather in which all was served are left out.
   */
  static CauseRuns of(Trials trials, List<Stretches> parts) {
    var runs = new CauseRuns(trials, List.copyOf(parts));
    runs.pick();
    for (int p = 0; p < parts.size(); p++) {
      runs.share(p);
      trials.forgetOtherSkies(parts.get(p).part);
    }
    return runs;
  }

  private void share(int p) {
    Stretches part = parts.get(p);
    int n = causes.size();
    shared.add(
        isExact
            ? ShapleyShares.exact(n, set -> unservedWh(part, leftOut(set)))
            : ShapleyShares.sampled(n, PAIRS, SEED + p, set -> unservedWh(part, leftOut(set))));
    int together = causes.indexOf(WinterCause.SMALLER_TOGETHER);
    if (together >= 0) {
      withoutOne.get(p).put(causes.get(together), unservedWh(part, leftOut(1 << together)));
    }
  }

  /** Of one stretch of one of the parts, both counted from 0 as they were given. */
  Shares shares(int part, int stretch) {
    return shares(List.of(part), stretch);
  }

  /** Of all hours of all parts. */
  Shares whole() {
    var all = new ArrayList<Integer>();
    for (int p = 0; p < parts.size(); p++) {
      all.add(p);
    }
    return shares(all, -1);
  }

  private Shares shares(List<Integer> of, int stretch) {
    int sets = 1 << causes.size();
    double wholeWh = 0.0, restWh = 0.0;
    var wh = new double[causes.size()];
    var aloneWh = new double[causes.size()];
    var variance = new double[causes.size()];
    int runs = 0;
    for (int p : of) {
      ShapleyShares shapley = shared.get(p);
      int measure = stretch < 0 ? parts.get(p).stretches.size() : stretch;
      wholeWh += shapley.value(0, measure);
      restWh += shapley.value(sets - 1, measure);
      for (int i = 0; i < wh.length; i++) {
        wh[i] -= shapley.share(i, measure);
        double[] without = withoutOne.get(p).getOrDefault(causes.get(i), new double[measure + 1]);
        aloneWh[i] += shapley.value(0, measure) - without[measure];
        variance[i] += Math.pow(shapley.standardError(i, measure), 2.0);
      }
      runs += shapley.runs();
    }
    var told = new ArrayList<Part>();
    for (int i = 0; i < wh.length; i++) {
      WinterCause cause = causes.get(i);
      told.add(
          new Part(
              cause,
              wh[i],
              Math.sqrt(variance[i]),
              wholeWh > 0.0 ? wh[i] / wholeWh : 0.0,
              aloneWh[i],
              cause == WinterCause.SMALLER_TOGETHER ? smaller : List.of()));
    }
    told.sort(Comparator.comparingDouble(Part::wh).reversed().thenComparing(Part::cause));
    return new Shares(wholeWh, told, restWh, isExact, runs + screenRuns);
  }

  /**
   * Those that matter when left out alone, the rest together. More than eight are shared over drawn
   * orders: none that matters is hidden among the smaller ones.
   */
  private void pick() {
    Set<Effect> present = Effects.present(trials.home());
    List<WinterCause> had = new ArrayList<>();
    for (WinterCause cause : WinterCause.values()) {
      if (cause.effects().stream().anyMatch(present::contains)) {
        had.add(cause);
      }
    }
    var saved = new EnumMap<WinterCause, Double>(WinterCause.class);
    double wholeWh = 0.0;
    for (Stretches part : parts) {
      double partWh = last(unservedWh(part, Set.of()));
      wholeWh += partWh;
      List<double[]> without =
          had.parallelStream().map(c -> unservedWh(part, c.effects())).toList();
      var byCause = new EnumMap<WinterCause, double[]>(WinterCause.class);
      for (int i = 0; i < had.size(); i++) {
        byCause.put(had.get(i), without.get(i));
        saved.merge(had.get(i), Math.abs(partWh - last(without.get(i))), Double::sum);
      }
      withoutOne.add(byCause);
      screenRuns += 1 + had.size();
    }
    double leastWh = LEAST_SHARE * wholeWh;
    had.sort(
        Comparator.comparingDouble((WinterCause c) -> -saved.getOrDefault(c, 0.0))
            .thenComparing(c -> c));
    for (WinterCause cause : had) {
      boolean isLarge = saved.getOrDefault(cause, 0.0) >= leastWh;
      (isLarge ? causes : smaller).add(cause);
    }
    if (smaller.size() == 1) {
      causes.addAll(smaller);
      smaller.clear();
    } else if (!smaller.isEmpty()) {
      causes.add(WinterCause.SMALLER_TOGETHER);
    }
    isExact = causes.size() <= ShapleyShares.MOST_EXACT;
  }

  private Set<Effect> leftOut(int set) {
    var effects = EnumSet.noneOf(Effect.class);
    for (int i = 0; i < causes.size(); i++) {
      if ((set >> i & 1) == 1) {
        effects.addAll(causes.get(i).effects());
        if (causes.get(i) == WinterCause.SMALLER_TOGETHER) {
          smaller.forEach(c -> effects.addAll(c.effects()));
        }
      }
    }
    return effects;
  }

  /** Each stretch, then all hours. */
  private double[] unservedWh(Stretches part, Set<Effect> leftOut) {
    double[] unmetWh = trials.brief(part.part, trials.home(), leftOut, part.startWh).unmetWh();
    var wh = new double[part.stretches.size() + 1];
    for (int i = 0; i < part.stretches.size(); i++) {
      wh[i] = part.stretches.get(i).sumWh(unmetWh);
    }
    wh[part.stretches.size()] = new Stretch(0, unmetWh.length).sumWh(unmetWh);
    return wh;
  }

  private static double last(double[] values) {
    return values[values.length - 1];
  }
}
