package greyspell.balance;

import greyspell.load.step.LoadRules;
import greyspell.power.step.GeneratorLimits;
import greyspell.storage.step.BankDetail;
import org.jspecify.annotations.Nullable;

/** What only {@link FullLoop} follows; every part may be missing. */
public record Detail(
    @Nullable BankDetail bank, @Nullable GeneratorLimits generator, LoadRules rules) {
  public static final Detail NONE = new Detail(null, null, LoadRules.NONE);

  /** True if constant efficiencies, no generator and no rules leave nothing for the full loop. */
  public boolean isNone() {
    return bank == null && generator == null && rules.isNone();
  }
}
