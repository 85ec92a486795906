package greyspell.electrical;

import java.util.List;

/**
 * One thing that was looked at.
 *
 * @param subject what was judged, a few words: "coldest morning, controller"
 * @param text what was found, with its numbers
 * @param reason why it matters, or where the rule comes from
 */
public record Finding(Severity severity, String subject, String text, String reason) {
  /**
   * From good to bad; the order counts. What cannot be judged is not passed: where a figure that
   * safety hangs on is not stated, the finding is {@code UNKNOWN} and says what to state.
   */
  public enum Severity {
    PASS("pass"),
    CAUTION("caution"),
    UNKNOWN("unknown"),
    FAIL("fail");

    private final String word;

    Severity(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }

    /** Beyond a limit, or not known to be within it: the one rule of every exit code. */
    public boolean isRefused() {
      return compareTo(UNKNOWN) >= 0;
    }
  }

  public static Finding pass(String subject, String text, String reason) {
    return new Finding(Severity.PASS, subject, text, reason);
  }

  public static Finding caution(String subject, String text, String reason) {
    return new Finding(Severity.CAUTION, subject, text, reason);
  }

  /**
   * A figure that safety hangs on is missing.
   *
   * @param reason what hangs on it, and what to state
   */
  public static Finding unknown(String subject, String text, String reason) {
    return new Finding(Severity.UNKNOWN, subject, text, reason);
  }

  public static Finding fail(String subject, String text, String reason) {
    return new Finding(Severity.FAIL, subject, text, reason);
  }

  /** The worst of all; pass if there are none. */
  public static Severity worst(List<Finding> findings) {
    var worst = Severity.PASS;
    for (Finding finding : findings) {
      if (finding.severity().compareTo(worst) > 0) {
        worst = finding.severity();
      }
    }
    return worst;
  }

  /** How many are of this severity. */
  public static int count(List<Finding> findings, Severity severity) {
    int count = 0;
    for (Finding finding : findings) {
      count += finding.severity() == severity ? 1 : 0;
    }
    return count;
  }
}
