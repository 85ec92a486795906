package greyspell.study;

import greyspell.weather.ensemble.WinterKind;
import greyspell.weather.ensemble.WinterSource;
import java.util.List;

/**
 * Winters ready to be run.
 *
 * @param source as many years as there are winters
 * @param cautions what must be known before odds are read off them, a sentence each
 */
public record WintersDrawn(WinterKind kind, WinterSource source, List<String> cautions) {
  public WintersDrawn {
    cautions = List.copyOf(cautions);
  }
}
