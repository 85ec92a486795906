package greyspell.chart;

import greyspell.study.Explanation;
import greyspell.words.Words;

/** The pictures of explain's pages, in the language of their words. */
public final class HandoverPictures {
  private HandoverPictures() {}

  /** Sun against need, month by month. */
  public static Picture months(Explanation explanation, Words words) {
    return SunNeedPicture.of(explanation, words);
  }

  /** One spell, day by day. */
  public static Picture spell(Explanation.Spell spell, Words words) {
    return SpellDaysPicture.of(spell, words);
  }

  /** How what was not served is shared among its causes. */
  public static Picture causes(Explanation.Shares shares, Words words) {
    return CausesPicture.of(shares, words);
  }
}
