package greyspell.chart;

import greyspell.outcome.Outcome.WinterBooks;
import greyspell.study.StudyResult;

/** Of several winters the one that a picture or page shows: the worst whole one. */
public final class WinterShown {
  private WinterShown() {}

  /** Most energy unmet; without any, the lowest charge. */
  public static WinterBooks of(StudyResult result) {
    WinterBooks worst = null;
    for (WinterBooks w : result.outcome().winters()) {
      if (w.winter().isWhole() && (worst == null || isWorse(w, worst))) {
        worst = w;
      }
    }
    if (worst == null) {
      throw new IllegalArgumentException("no whole winter in the results");
    }
    return worst;
  }

  private static boolean isWorse(WinterBooks a, WinterBooks b) {
    double more = a.figures().unmetWh() - b.figures().unmetWh();
    return more > 0.0
        || (more == 0.0 && a.figures().lowestChargeWh() < b.figures().lowestChargeWh());
  }
}
