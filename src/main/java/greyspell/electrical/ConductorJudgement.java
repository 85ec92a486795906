package greyspell.electrical;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A run as it is stated, judged, and how drop and loss would change with its size.
 *
 * @param ampacityA allowed at the stated air temperature, all wires together; null if not judged
 * @param stated the row of the stated size
 * @param sizes the stated size between its neighbours, small to large
 */
public record ConductorJudgement(
    ConductorRun run,
    RunLoad load,
    @Nullable Double ampacityA,
    SizeRow stated,
    List<SizeRow> sizes,
    List<Finding> findings) {
  public ConductorJudgement {
    sizes = List.copyOf(sizes);
    findings = List.copyOf(findings);
  }

  /**
   * One size at the same length and current.
   *
   * @param conductorC metal temperature at the rated current
   * @param loopOhm there and back at that temperature
   * @param dropShare of the run's voltage
   * @param lossW at the rated current
   * @param yearLossWh over the simulated year, 0 if nothing was simulated
   */
  public record SizeRow(
      WireSize size,
      double conductorC,
      double loopOhm,
      double dropV,
      double dropShare,
      double lossW,
      double yearLossWh) {}

  public Finding.Severity verdict() {
    return Finding.worst(findings);
  }

  /** The findings with the run's name before each, for a list of all runs. */
  public List<Finding> namedFindings() {
    return findings.stream()
        .map(f -> new Finding(f.severity(), run.name() + ": " + f.subject(), f.text(), f.reason()))
        .toList();
  }
}
