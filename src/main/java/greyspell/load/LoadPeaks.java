package greyspell.load;

import greyspell.calendar.HourCalendar;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * The greatest AC power that may be asked for within each hour.
 *
 * <pre>
 * peak = max(running + start, mean of the hour)
 * running = sum of the running power of what can run together, standby of the rest, × growth
 * start   = the largest single (surge - running power) among what can run
 * </pre>
 *
 * Without random variation everything that runs for any part of the hour can run together: the
 * least favourable case. With random variation (by day or by hour) the hour is looked at {@value
 * #MOMENTS} times; each time every single appliance runs with a chance that is its share of the
 * hour, apart from the others, and the highest of these sums counts. One motor starts at a time. A
 * measured log adds its own highest step of the hour. Each year has its own seed.
 *
 * <p>Not for sizing an inverter alone: two motors may well start together. Source: own choice, no
 * source. Held by LoadPeaksTest.
 */
final class LoadPeaks {
  static final int MOMENTS = 12;
  private static final long OWN_STREAM = 0x5851F42D4C957F2DL; // apart from the variation's draws

  private final double[][] share; // this day's run, by appliance
  private final ApplianceSpec[] specs;
  private final double growthFactor;

  private LoadPeaks(int appliances, double growthFactor) {
    share = new double[appliances][];
    specs = new ApplianceSpec[appliances];
    this.growthFactor = growthFactor;
  }

  /**
   * Of the appliances alone.
   *
   * @param isAsked for which hours; others are left at 0. An hour's draws are its own, whichever
   *     others are asked for
   * @param runningW filled with what runs together
   * @param peakW filled with the same and the start that adds most
   */
  static void fill(
      List<ApplianceHours> appliances,
      HourCalendar calendar,
      double growthFactor,
      boolean isVaried,
      long seed,
      IntPredicate isAsked,
      double[] runningW,
      double[] peakW) {
    var peaks = new LoadPeaks(appliances.size(), growthFactor);
    int year = 0;
    var random = new Draws(seed);
    for (int d = 0; d < calendar.days(); d++) {
      if (calendar.year(d * 24) != year) {
        year = calendar.year(d * 24);
        random = new Draws(YearSeed.of(seed, OWN_STREAM, year));
      }
      for (int a = 0; a < appliances.size(); a++) {
        peaks.specs[a] = appliances.get(a).spec;
        peaks.share[a] = appliances.get(a).runOf(d);
      }
      for (int i = 0; i < 24; i++) {
        if (isAsked.test(d * 24 + i)) {
          double nowW = isVaried ? peaks.drawnW(i, random) : peaks.togetherW(i);
          runningW[d * 24 + i] = nowW;
          peakW[d * 24 + i] = nowW + peaks.startW(i);
        } else if (isVaried) {
          random.skip(peaks.draws(i));
        }
      }
    }
  }

  /** How many draws {@link #drawnW} takes. */
  private int draws(int i) {
    int draws = 0;
    for (int a = 0; a < specs.length; a++) {
      boolean isDrawn = share[a][i] > 0.0 && share[a][i] < 1.0;
      draws += isDrawn && !specs[a].isDirectCurrent() ? specs[a].quantity() : 0;
    }
    return MOMENTS * draws;
  }

  private double togetherW(int i) {
    double sumW = 0.0;
    for (int a = 0; a < specs.length; a++) {
      ApplianceSpec spec = specs[a];
      if (!spec.isDirectCurrent()) {
        double eachW = share[a][i] > 0.0 ? spec.powerW() : 0.0;
        sumW += spec.quantity() * Math.max(eachW, spec.standbyW());
      }
    }
    return sumW * growthFactor;
  }

  private double drawnW(int i, Draws random) {
    double mostW = 0.0;
    for (int moment = 0; moment < MOMENTS; moment++) {
      double sumW = 0.0;
      for (int a = 0; a < specs.length; a++) {
        ApplianceSpec spec = specs[a];
        if (!spec.isDirectCurrent()) {
          sumW += spec.quantity() * spec.standbyW();
          double moreW = Math.max(0.0, spec.powerW() - spec.standbyW());
          sumW += moreW * running(spec.quantity(), share[a][i], random);
        }
      }
      mostW = Math.max(mostW, sumW);
    }
    return mostW * growthFactor;
  }

  private static int running(int quantity, double share, Draws random) {
    if (share <= 0.0) {
      return 0;
    }
    if (share >= 1.0) {
      return quantity;
    }
    int running = 0;
    for (int n = 0; n < quantity; n++) {
      if (random.next() < share) {
        running++;
      }
    }
    return running;
  }

  private double startW(int i) {
    double mostW = 0.0;
    for (int a = 0; a < specs.length; a++) {
      Double surgeW = specs[a].surgeW();
      boolean canStart = share[a][i] > 0.0 && specs[a].quantity() > 0;
      if (surgeW != null && canStart && !specs[a].isDirectCurrent()) {
        mostW = Math.max(mostW, surgeW - specs[a].powerW());
      }
    }
    return mostW;
  }
}
