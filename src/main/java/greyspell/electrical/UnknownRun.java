package greyspell.electrical;

import greyspell.quantity.Check;
import greyspell.quantity.Show;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A pair of wires that is there, but whose size nobody knows: what it bears is not known, and no
 * loss of it can be reckoned. Where the user states what the cable may carry, its heat is judged by
 * that; its drop never.
 *
 * @param name where it runs: "array to controller"
 * @param statedAmpacityA as in {@link ConductorRun}, null if not stated
 */
public record UnknownRun(ConductorRun.Kind kind, String name, @Nullable Double statedAmpacityA) {
  public UnknownRun {
    if (statedAmpacityA != null) {
      Check.positive("statedAmpacityA", statedAmpacityA);
    }
  }

  /**
   * What can be said of it.
   *
   * @param booked which loss stands in the books in its place, in words
   */
  public List<Finding> findings(RunLoad load, String booked) {
    var findings = new ArrayList<Finding>();
    Double allowedA = statedAmpacityA;
    if (allowedA == null) {
      findings.add(
          Finding.unknown(
              ConductorJudge.HEAT,
              "a cable of unknown size at " + Show.current(load.circuitA()) + ": not judged",
              "nobody can say whether it overheats: read the size printed along the cable and"
                  + " state it, or state allowed_current by the cable's own table"));
    } else {
      ConductorJudge.statedHeat("a cable of unknown size", allowedA, load, findings);
    }
    findings.add(
        Finding.caution(
            ConductorJudge.DROP,
            "not judged: the size is unknown",
            booked + "; drop and loss follow from the size"));
    return List.copyOf(findings);
  }
}
