package greyspell.load;

import greyspell.load.ApplianceSpec.HourSpan;
import java.util.ArrayList;
import java.util.List;

/** Which part of each hour of a day lies in an appliance's spans. Spans that overlap count once. */
final class DaySpans {
  /** Of a day that is one of the appliance's days, without what began the day before. */
  final double[] todayShare;

  /** Of a day after one of its days: what runs on past midnight. */
  final double[] tailShare;

  /** Of a day where both hold. */
  final double[] bothShare;

  DaySpans(List<HourSpan> spans) {
    var today = new ArrayList<HourSpan>();
    var tail = new ArrayList<HourSpan>();
    for (HourSpan span : spans) {
      if (span.toH() > span.fromH()) {
        today.add(span);
      } else {
        today.add(new HourSpan(span.fromH(), 24.0));
        if (span.toH() > 0.0) {
          tail.add(new HourSpan(0.0, span.toH()));
        }
      }
    }
    todayShare = shares(today);
    tailShare = shares(tail);
    today.addAll(tail);
    bothShare = shares(today);
  }

  private static double[] shares(List<HourSpan> spans) {
    HourSpan[] sorted = spans.toArray(new HourSpan[0]);
    for (int i = 1; i < sorted.length; i++) {
      for (int j = i; j > 0 && sorted[j].fromH() < sorted[j - 1].fromH(); j--) {
        HourSpan later = sorted[j - 1];
        sorted[j - 1] = sorted[j];
        sorted[j] = later;
      }
    }
    var share = new double[24];
    double doneH = 0.0;
    for (HourSpan span : sorted) {
      double fromH = Math.max(span.fromH(), doneH);
      for (int h = (int) fromH; h < 24 && h < span.toH(); h++) {
        share[h] += Math.max(0.0, Math.min(span.toH(), h + 1.0) - Math.max(fromH, h));
      }
      doneH = Math.max(doneH, span.toH());
    }
    return share;
  }
}
