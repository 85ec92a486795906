package greyspell.storage;

import greyspell.storage.CellDefaults.Tanks;
import org.jspecify.annotations.Nullable;

/**
 * What a bank gives when it is emptied evenly and fast, beside the capacity on its sheet.
 *
 * <pre>
 * share(t) = C(t) / C(20 h)     for t below 20 h, else 1
 *
 * C(t)  of the two tanks, see {@link TwoTankFit}     t  until empty, h, above 0
 * </pre>
 *
 * The tanks are the bank's own where it has them, else the usual ones of its chemistry. Lithium is
 * taken to give the same at every rate that its limits allow (common practice, no source).
 */
public final class SheetCapacity {
  private SheetCapacity() {}

  /** Share of the capacity on the sheet, 1 at most. */
  public static double share(BankSpec bank, double inH) {
    Tanks tanks = tanks(bank);
    if (tanks == null || inH >= CellDefaults.RATED_H) {
      return 1.0;
    }
    return given(tanks, inH) / given(tanks, CellDefaults.RATED_H);
  }

  private static @Nullable Tanks tanks(BankSpec bank) {
    KineticSheet own = bank.tanks();
    return own == null
        ? CellDefaults.of(bank.chemistry()).tanks()
        : new Tanks(own.availableShare(), own.exchangePerH());
  }

  private static double given(Tanks tanks, double inH) {
    return TwoTankFit.givenShare(tanks.availableShare(), tanks.exchangePerH(), inH);
  }
}
