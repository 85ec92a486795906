package greyspell.report;

import greyspell.chart.Say;
import greyspell.quantity.Show;
import greyspell.study.CheapestByPrice;
import greyspell.study.CheapestByPrice.Range;
import greyspell.study.CheapestByPrice.Unknown;
import greyspell.study.SizeResult;
import java.util.ArrayList;
import java.util.List;

/** Which pair is the cheapest while a price is missing, in words. */
final class SizePrices {
  private final SizeResult result;
  private final CheapestByPrice byPrice;

  private SizePrices(SizeResult result, CheapestByPrice byPrice) {
    this.result = result;
    this.byPrice = byPrice;
  }

  /** What to state, and what the answer hangs on until then. */
  static String words(SizeResult result) {
    String state =
        "your prices decide: state "
            + Say.list(result.missingPrices().stream().map(k -> "costs." + k).toList())
            + ".";
    CheapestByPrice byPrice = result.byPrice();
    return byPrice == null ? state : state + " " + new SizePrices(result, byPrice).untilThen();
  }

  private String untilThen() {
    List<Range> ranges = byPrice.ranges();
    var parts = new ArrayList<String>();
    for (Range range : ranges) {
      String condition =
          ranges.size() == 1
              ? "whatever " + what() + " costs"
              : Double.isInfinite(range.upToCost())
                  ? "if more"
                  : (parts.isEmpty() ? "if " + what() + " costs at most " : "at most ")
                      + price(range);
      parts.add(condition + ": " + SizeText.pair(range.point()));
    }
    return "Cheapest "
        + String.join("; ", parts)
        + "."
        + (byPrice.areControllersLeftAside()
            ? " What more controllers cost is left aside in that."
            : "");
  }

  private String what() {
    return switch (byPrice.unknown()) {
      case MODULE -> "a module";
      case PACK, PACK_IN_MODULES -> "a pack";
      case CONTROLLER -> "one more controller";
    };
  }

  private String price(Range range) {
    double cost = range.upToCost();
    return byPrice.unknown() == Unknown.PACK_IN_MODULES
        ? "as much as " + Show.trimmed(cost, 1) + (cost == 1.0 ? " module" : " modules")
        : Show.money(result.home().costs().currency(), cost);
  }
}
