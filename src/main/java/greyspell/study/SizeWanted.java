package greyspell.study;

import greyspell.scenario.Scenario;
import greyspell.sizing.Target;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a home is to be sized for.
 *
 * @param targets all must hold
 * @param mostPacks largest bank that is looked at, null for {@value #MOST_TIMES} times the present
 *     one, {@value #FEW_PACKS} at least
 * @param stepWh for banks of any size, in steps of so much nominal energy; null for whole packs
 * @param reserveDays of the standards' hand method
 * @param wantedRatio array-to-load, of the hand method
 */
public record SizeWanted(
    List<Target> targets,
    PanelSteps.Room room,
    @Nullable Integer mostPacks,
    @Nullable Double stepWh,
    double reserveDays,
    double wantedRatio) {
  /** Households, from memory of AS/NZS 4509.2: three to seven days. */
  public static final double USUAL_RESERVE_D = 5.0;

  /** For a cloudy place, from memory of IEEE 1562: 1.3 to 1.4 and above. */
  public static final double USUAL_RATIO = 1.3;

  static final int MOST_TIMES = 4;
  static final int FEW_PACKS = 12;

  /** Steps of a bank of any size end here. */
  static final int MOST_STEPS = 400;

  public SizeWanted {
    targets = List.copyOf(targets);
  }

  BankSteps banks(Scenario home) {
    int present = home.bank().packs();
    int most = mostPacks == null ? Math.max(FEW_PACKS, MOST_TIMES * present) : mostPacks;
    if (stepWh == null) {
      return BankSteps.packs(home, most);
    }
    double mostWh = most * home.bank().capacityWh() / present;
    return BankSteps.sizes(
        home, stepWh, (int) Math.max(1, Math.min(MOST_STEPS, Math.ceil(mostWh / stepWh - 1e-9))));
  }
}
