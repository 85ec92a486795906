package greyspell.chart;

import greyspell.ladder.Ladder;
import java.util.ArrayList;
import java.util.List;

/** The pictures of a ladder. */
public final class LadderPictures {
  private LadderPictures() {}

  public static List<Picture> of(Ladder ladder) {
    var pictures = new ArrayList<Picture>();
    pictures.add(LadderPicture.of(ladder));
    if (ladder.bars().stream().anyMatch(b -> b.widthWh() > 0.0)) {
      pictures.add(AssumptionsPicture.of(ladder));
    }
    return List.copyOf(pictures);
  }
}
