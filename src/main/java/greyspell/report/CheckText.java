package greyspell.report;

import greyspell.electrical.Finding;
import greyspell.electrical.Finding.Severity;
import greyspell.study.ElectricalCheck;
import greyspell.study.ElectricalCheck.Group;
import java.util.ArrayList;
import java.util.List;

/** Everything that was looked at, on one screen: what fails first, what passes counted. */
public final class CheckText {
  static final List<Severity> WORST_FIRST =
      List.of(Severity.FAIL, Severity.UNKNOWN, Severity.CAUTION, Severity.PASS);

  private CheckText() {}

  /** One screen, or with everything: what passed, the wires size by size, the checklist. */
  public static String of(String home, ElectricalCheck check, boolean isEverything) {
    var out = new StringBuilder();
    findings(out, home, check.groups(), isEverything);
    if (isEverything && !check.runs().isEmpty()) {
      out.append('\n');
      ConductorsText.runs(out, check.runs());
    }
    out.append('\n');
    if (isEverything) {
      checklist(out);
    } else {
      Columns.wrap(
          out,
          "",
          "With --all: what passed, each wire size by size, and the checklist for a licensed person.");
    }
    return out.append('\n').append(StringsText.governs()).toString();
  }

  /** "1 failure, no cautions, 12 passed". */
  static String counts(List<Finding> findings) {
    int unknown = Finding.count(findings, Severity.UNKNOWN);
    return count(Finding.count(findings, Severity.FAIL), "failure", "failures")
        + (unknown == 0 ? "" : ", " + unknown + " unknown")
        + ", "
        + count(Finding.count(findings, Severity.CAUTION), "caution", "cautions")
        + ", "
        + Finding.count(findings, Severity.PASS)
        + " passed";
  }

  /** Failures first, then what cannot be judged, then cautions. */
  private static void findings(
      StringBuilder out, String home, List<Group> groups, boolean isEveryFindingShown) {
    var all = new ArrayList<Finding>();
    groups.forEach(group -> all.addAll(group.findings()));
    Columns.wrap(out, "", home + ": " + counts(all));
    for (Group group : groups) {
      out.append('\n');
      int passed = Finding.count(group.findings(), Severity.PASS);
      Columns.wrap(
          out,
          "",
          group.title()
              + ": "
              + (group.findings().isEmpty()
                  ? group.ifEmpty()
                  : passed == group.findings().size()
                      ? (passed == 1 ? "passed" : "all " + passed + " passed")
                      : passed + " of " + group.findings().size() + " passed"));
      for (Severity severity : WORST_FIRST) {
        if (severity != Severity.PASS || isEveryFindingShown) {
          StringsText.findings(
              out, group.findings().stream().filter(f -> f.severity() == severity).toList());
        }
      }
    }
  }

  /** The list that a licensed person goes through, with the reason for each item. */
  private static void checklist(StringBuilder out) {
    out.append("To be seen by a licensed person, and why\n");
    for (Checklist.Item item : Checklist.items()) {
      Columns.wrap(out, "  [ ] ", item.name() + ": " + item.reason());
    }
  }

  private static String count(int n, String one, String many) {
    return n == 0 ? "no " + many : n + " " + (n == 1 ? one : many);
  }
}
