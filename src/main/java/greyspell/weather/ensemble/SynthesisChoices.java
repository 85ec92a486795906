package greyspell.weather.ensemble;

import greyspell.calendar.Monthly;
import greyspell.quantity.Check;
import org.jspecify.annotations.Nullable;

/**
 * What may be chosen when years are made from monthly means.
 *
 * @param memory how long skies last
 * @param yearSpreadFraction by month: standard deviation over the years of a month's irradiation,
 *     over its mean; null is the rule: what the memory of the sky brings by itself
 * @param temperatureSwingK by month: standard deviation of a day's temperature; null is the rule
 */
public record SynthesisChoices(
    SkyMemory memory, @Nullable Monthly yearSpreadFraction, @Nullable Monthly temperatureSwingK) {
  public static final SynthesisChoices USUAL =
      new SynthesisChoices(SkyMemory.GREY_SPELLS, null, null);

  public SynthesisChoices {
    if (yearSpreadFraction != null) {
      for (int month = 1; month <= 12; month++) {
        Check.within("yearSpreadFraction", yearSpreadFraction.in(month), 0.0, 0.6);
      }
    }
    if (temperatureSwingK != null) {
      for (int month = 1; month <= 12; month++) {
        Check.within("temperatureSwingK", temperatureSwingK.in(month), 0.0, 15.0);
      }
    }
  }

  public SynthesisChoices withMemory(SkyMemory other) {
    return new SynthesisChoices(other, yearSpreadFraction, temperatureSwingK);
  }

  public SynthesisChoices withYearSpread(@Nullable Monthly fraction) {
    return new SynthesisChoices(memory, fraction, temperatureSwingK);
  }

  public SynthesisChoices withTemperatureSwing(@Nullable Monthly swingK) {
    return new SynthesisChoices(memory, yearSpreadFraction, swingK);
  }
}
