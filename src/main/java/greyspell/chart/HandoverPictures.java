package greyspell.chart;

import greyspell.study.Explanation;
import greyspell.words.Words;

/** The pictures of explain's pages, in the language of their words. */
public final class HandoverPictures {
  private HandoverPictures() {}

  /**
   * The same picture for a page's width and for a column half as wide.
   *
   * @param column of the same title, without a note
   */
  public record Both(Picture page, Picture column) {}

  /** Sun against need, month by month. */
  public static Both months(Explanation explanation, Words words) {
    return new Both(
        SunNeedPicture.of(explanation, words, Span.PAGE),
        SunNeedPicture.of(explanation, words, Span.COLUMN));
  }

  /** One spell, day by day. */
  public static Both spell(Explanation.Spell spell, Words words) {
    return new Both(
        SpellDaysPicture.of(spell, words, Span.PAGE),
        SpellDaysPicture.of(spell, words, Span.COLUMN));
  }

  /** How what was not served is shared among its causes. */
  public static Both causes(Explanation.Shares shares, Words words) {
    return new Both(
        CausesPicture.of(shares, words, Span.PAGE), CausesPicture.of(shares, words, Span.COLUMN));
  }
}
