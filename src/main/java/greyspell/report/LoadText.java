package greyspell.report;

import greyspell.electrical.Finding;
import greyspell.load.AlwaysOn;
import greyspell.load.LoadBook;
import greyspell.load.LogFit;
import greyspell.load.Priority;
import greyspell.quantity.Show;
import greyspell.scenario.Scenario.Assumption;
import greyspell.study.LoadAudit;
import java.util.List;
import java.util.Locale;

/** The audit of what a home asks for, as text of at most a hundred columns. */
public final class LoadText {
  private static final String LEANING = "all, if all lean one way";
  private static final int MARGIN = 2;
  private static final int BAR = 24;
  private static final double WH_PER_KWH = 1000.0;
  private static final double HOURS_PER_DAY = 24.0;

  private final LoadAudit audit;
  private final StringBuilder out = new StringBuilder();
  private final int nameWidth;

  private LoadText(LoadAudit audit) {
    this.audit = audit;
    int cell = 3; // the name of a month
    int longest = LEANING.length();
    for (int m = 1; m <= 12; m++) {
      cell = Math.max(cell, Show.number(audit.dayWh(m), 0).length());
    }
    for (LoadBook book : audit.books()) {
      longest = Math.max(longest, book.name().length());
    }
    nameWidth = Math.max(8, Math.min(longest, Columns.WIDTH - MARGIN - 12 * (cell + 1)));
  }

  public static String of(LoadAudit audit) {
    var text = new LoadText(audit);
    text.head();
    text.months();
    text.sure();
    text.profile();
    text.peak();
    text.alwaysOn();
    text.log();
    return text.out.toString();
  }

  private void head() {
    int winter = audit.winterMonth();
    int summer = audit.summerMonth();
    Columns.wrap(
        out,
        "",
        audit.home().name()
            + " asks for "
            + Show.energy(audit.daily(audit.yearlyWh()))
            + " a day: "
            + Show.energy(audit.dayWh(winter))
            + " in "
            + Show.month(winter)
            + ", "
            + Show.energy(audit.dayWh(summer))
            + " in "
            + Show.month(summer)
            + ". Loss in the inverter and what the system takes for itself come on top.");
    double growth = audit.home().load().growthFraction();
    if (growth != 0.0) {
      Columns.wrap(out, "", "A growth of " + Show.percent(growth) + " is in all figures.");
    }
  }

  private void months() {
    out.append("\nWh a day in each month\n");
    var table = new Columns();
    var head = new String[13];
    head[0] = pad("");
    for (int m = 1; m <= 12; m++) {
      head[m] = Show.shortMonth(m);
    }
    table.row(head);
    for (LoadBook book : audit.books()) {
      var row = new String[13];
      row[0] = pad(book.name());
      for (int m = 1; m <= 12; m++) {
        row[m] = Show.number(audit.dayWh(book, m), 0);
      }
      table.row(row);
    }
    var sum = new String[13];
    sum[0] = pad("all");
    for (int m = 1; m <= 12; m++) {
      sum[m] = Show.number(audit.dayWh(m), 0);
    }
    table.row(sum);
    table.writeTight(out);
  }

  private String pad(String name) {
    return name.length() > nameWidth
        ? name.substring(0, nameWidth - 1).concat("…")
        : name.concat(" ".repeat(nameWidth - name.length()));
  }

  private void sure() {
    out.append("\nHow sure it is, kWh a day over the year\n");
    var table = new Columns();
    table.row(pad(""), "low", "likely", "high", "share", "class, evidence");
    for (LoadBook book : audit.books()) {
      table.row(
          pad(book.name()),
          kwh(book.lowYearlyWh()),
          kwh(book.yearlyWh()),
          kwh(book.highYearlyWh()),
          Show.percent(audit.yearlyWh() > 0.0 ? book.yearlyWh() / audit.yearlyWh() : 0.0),
          words(book));
    }
    table.row(
        pad(LEANING),
        kwh(audit.lowYearlyWh()),
        kwh(audit.yearlyWh()),
        kwh(audit.highYearlyWh()),
        "100 %",
        "");
    table.write(out, true);
    LoadBook least = audit.leastKnown();
    if (least != null) {
      Columns.wrap(
          out,
          "  ",
          "Measuring "
              + least.name()
              + " would narrow the sum most: it may take "
              + kwh(least.lowYearlyWh())
              + " to "
              + kwh(least.highYearlyWh())
              + " kWh a day.");
    }
  }

  private String kwh(double yearWh) {
    return Show.number(audit.daily(yearWh) / WH_PER_KWH, 2);
  }

  private static String words(LoadBook book) {
    return book.priority().name().toLowerCase(Locale.ROOT).replace('_', ' ')
        + ", "
        + book.evidence().name().toLowerCase(Locale.ROOT)
        + (book.isDirectCurrent() ? ", direct current" : "")
        + (book.isMedical() ? ", medical" : "");
  }

  private void profile() {
    double[] winter = audit.profileWh(audit.winterMonth());
    double[] summer = audit.profileWh(audit.summerMonth());
    double most = 1.0;
    for (int i = 0; i < 24; i++) {
      most = Math.max(most, Math.max(winter[i], summer[i]));
    }
    out.append(
        "\nThe day, Wh in each hour of standard time (m must run, s should run, w can wait)\n");
    String first = Show.month(audit.winterMonth());
    out.append("           ")
        .append(first)
        .append(" ".repeat(BAR + 14 - first.length()))
        .append(Show.month(audit.summerMonth()))
        .append('\n');
    for (int i = 0; i < 24; i++) {
      out.append(i < 10 ? "   " : "  ").append(i).append(" h");
      side(audit.winterMonth(), i, winter[i], most, true);
      side(audit.summerMonth(), i, summer[i], most, false);
      out.append('\n');
    }
  }

  private void side(int month, int hour, double wh, double most, boolean isPadded) {
    String number = Show.number(wh, 0);
    out.append("  ")
        .append(" ".repeat(Math.max(0, 6 - number.length())))
        .append(number)
        .append("  ");
    var bar = new StringBuilder();
    double sumWh = 0.0;
    for (Priority priority : Priority.values()) {
      sumWh += audit.profileWh(month, priority)[hour];
      int end = (int) Math.round(BAR * sumWh / most);
      while (bar.length() < end) {
        bar.append(letter(priority));
      }
    }
    out.append(bar);
    if (isPadded) {
      out.append(" ".repeat(BAR + 2 - bar.length()));
    }
  }

  private static char letter(Priority priority) {
    return switch (priority) {
      case MUST_RUN -> 'm';
      case SHOULD_RUN -> 's';
      case CAN_WAIT -> 'w';
    };
  }

  private void peak() {
    out.append("\nAgainst the inverter\n");
    int hour = audit.peakHour();
    double continuousW = audit.inverter().continuousW();
    Double surgeW = audit.inverter().surgeW();
    Columns.wrap(
        out,
        "  ",
        "Greatest demand within an hour, with the largest motor start: "
            + Show.power(audit.peakW())
            + " at "
            + audit.calendar().hourOfDay(hour)
            + " h in "
            + Show.month(audit.calendar().month(hour))
            + "; the inverter holds "
            + Show.power(continuousW)
            + (surgeW == null
                ? " and states no surge power."
                : " and gives " + Show.power(surgeW) + " for a moment.")
            + " Greatest mean of an hour: "
            + Show.power(audit.mostHourW())
            + ".");
    if (surgeW != null && audit.peakW() > surgeW) {
      Columns.wrap(
          out,
          "  ",
          "In "
              + Show.hours(audit.hoursAbove(surgeW))
              + " of the year everything that may run together, with a start, asks for more than that:"
              + " some of it must not run together.");
    }
    for (Finding finding : audit.findings()) {
      Columns.wrap(out, "  ", finding.severity().word() + ": " + finding.text());
    }
    Columns.wrap(
        out,
        "  ",
        "Starts last seconds and an hourly sum does not see them: no promise, and no size of"
            + " inverter, wire or fuse is advised here.");
  }

  private void alwaysOn() {
    int winter = audit.winterMonth();
    double drawW = audit.alwaysOnW();
    out.append("\nAlways on, system and loads\n");
    Columns.wrap(
        out,
        "  ",
        Show.power(drawW)
            + " = "
            + Show.energy(drawW * HOURS_PER_DAY)
            + " a day = "
            + Show.percent(audit.alwaysOnShare(winter))
            + " of "
            + Show.month(winter)
            + "'s day, the system's own draw counted in the day too.");
    parts(audit.system());
    parts(audit.alwaysOn());
  }

  private void parts(AlwaysOn parts) {
    for (AlwaysOn.Part part : parts.parts()) {
      String watts = Show.power(part.meanW());
      out.append("  ")
          .append(" ".repeat(Math.max(0, 8 - watts.length())))
          .append(watts)
          .append("  ")
          .append(part.name())
          .append('\n');
    }
  }

  private void log() {
    List<Assumption> assumptions = audit.assumptions();
    if (assumptions.isEmpty()) {
      return;
    }
    out.append("\nThe measured log\n");
    for (Assumption assumption : assumptions) {
      Columns.wrap(out, "  ", assumption.value() + ": " + assumption.why() + ".");
    }
    LogFit fit = audit.logFit();
    if (fit == null || !fit.isUsable()) {
      return;
    }
    var table = new Columns();
    table.row("kWh a day", "±", "for");
    for (LogFit.Coefficient c : fit.coefficients()) {
      table.row(
          Show.number(c.valueWh() / WH_PER_KWH, 2),
          Show.number(c.standardErrorWh() / WH_PER_KWH, 2),
          c.term().words());
    }
    table.write(out, true);
  }
}
