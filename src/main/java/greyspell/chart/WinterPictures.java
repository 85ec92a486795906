package greyspell.chart;

import greyspell.outcome.WinterBook;
import java.util.List;

/** The pictures of many winters. */
public final class WinterPictures {
  /** File names of all of them, whether drawn this time or not. */
  public static final List<String> NAMES = List.of("winters", "winter-charge", "winter-banks");

  private static final int LEAST_WINTERS = 2;

  private WinterPictures() {}

  /** In the order in which they are read; of one winter alone there is nothing to compare. */
  public static List<Picture> of(WinterBook book) {
    return book.count() < LEAST_WINTERS
        ? List.of()
        : List.of(WinterDotsPicture.of(book), ChargeRibbonPicture.of(book), ReturnPicture.of(book));
  }
}
