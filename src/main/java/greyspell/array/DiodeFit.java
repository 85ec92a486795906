package greyspell.array;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What came of fitting a single-diode curve to a data sheet.
 *
 * @param diode the curve, null if none fits
 * @param cautions where the sheet's figures could not all be met, in words
 * @param failure why no curve fits, empty if one does
 */
public record DiodeFit(@Nullable SingleDiode diode, List<String> cautions, String failure) {
  public DiodeFit {
    cautions = List.copyOf(cautions);
  }

  static DiodeFit failed(String why) {
    return new DiodeFit(null, List.of(), why);
  }
}
