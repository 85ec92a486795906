package greyspell.report;

import greyspell.electrical.Finding;
import greyspell.electrical.Finding.Severity;
import java.util.ArrayList;
import java.util.List;

/** Everything that was looked at, on one screen: what fails first, what passes counted. */
public final class CheckText {
  private CheckText() {}

  /** Findings under one heading. */
  public record Group(String title, List<Finding> findings) {
    public Group {
      findings = List.copyOf(findings);
    }
  }

  /** Of all groups. */
  public static Severity worst(List<Group> groups) {
    var all = new ArrayList<Finding>();
    groups.forEach(group -> all.addAll(group.findings()));
    return Finding.worst(all);
  }

  /**
   * Failures first, then cautions.
   *
   * @param isEveryFindingShown also what passes
   */
  public static String of(String home, List<Group> groups, boolean isEveryFindingShown) {
    var out = new StringBuilder();
    int passes = 0;
    int cautions = 0;
    int fails = 0;
    for (Group group : groups) {
      passes += Finding.count(group.findings(), Severity.PASS);
      cautions += Finding.count(group.findings(), Severity.CAUTION);
      fails += Finding.count(group.findings(), Severity.FAIL);
    }
    Columns.wrap(
        out,
        "",
        home
            + ": "
            + count(fails, "failure", "failures")
            + ", "
            + count(cautions, "caution", "cautions")
            + ", "
            + passes
            + " passed");
    for (Group group : groups) {
      out.append('\n').append(group.title());
      int passed = Finding.count(group.findings(), Severity.PASS);
      out.append(
          group.findings().isEmpty()
              ? ": nothing to judge\n"
              : passed == group.findings().size()
                  ? ": all " + passed + " passed\n"
                  : ": " + passed + " of " + group.findings().size() + " passed\n");
      for (Severity severity : List.of(Severity.FAIL, Severity.CAUTION, Severity.PASS)) {
        if (severity != Severity.PASS || isEveryFindingShown) {
          StringsText.findings(
              out, group.findings().stream().filter(f -> f.severity() == severity).toList());
        }
      }
    }
    return out.append('\n').append(StringsText.governs()).toString();
  }

  /** The list that a licensed person goes through, with the reason for each item. */
  public static String checklist() {
    var out = new StringBuilder("To be seen by a licensed person, and why\n");
    for (Checklist.Item item : Checklist.items()) {
      Columns.wrap(out, "  [ ] ", item.name() + ": " + item.reason());
    }
    return out.append('\n').append(StringsText.governs()).toString();
  }

  private static String count(int n, String one, String many) {
    return n == 0 ? "no " + many : n + " " + (n == 1 ? one : many);
  }
}
