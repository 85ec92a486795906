package greyspell.report;

import greyspell.operate.RuleCard;
import greyspell.operate.RuleCard.Told;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/** The rules as one page to print and stick on the fridge, in large type. */
public final class RulesCardPage {
  public static final String CARD = "fridge-card.html";

  private static String head(String name) {
    return """
      <!DOCTYPE html>
      <html lang="en"><head><meta charset="utf-8">
      <meta name="viewport" content="width=device-width, initial-scale=1">
      <title>NAME</title>
      <style>
      body { font: 16pt/1.4 "DejaVu Sans", Verdana, sans-serif; color: #1d2a33; background: #fff; margin: 14mm auto; max-width: 180mm; padding: 0 6mm; }
      h1 { font-size: 24pt; margin: 0 0 8mm; }
      ol { padding-left: 12mm; } li { margin-bottom: 8mm; }
      li strong { display: block; font-size: 19pt; line-height: 1.25; }
      p.small, li span { font-size: 12pt; color: #55636d; }
      @media print { body { margin: 0; } }
      </style></head><body>
      <h1>NAME: when the weather turns grey</h1>
      """
        .replace("NAME", name);
  }

  private RulesCardPage() {}

  /** Writes the card and the words into a folder. */
  public static List<Path> write(RuleCard card, Path folder) {
    try (var deliver = new Deliver(folder)) {
      deliver.write(CARD, html(card).getBytes(StandardCharsets.UTF_8));
      deliver.write("rules.txt", RulesText.of(card).getBytes(StandardCharsets.UTF_8));
      return deliver.done();
    }
  }

  static String html(RuleCard card) {
    String name = escaped(card.home().name());
    var out = new StringBuilder(head(name));
    if (card.tried().isEmpty()) {
      out.append("<p>").append(escaped(RulesText.ONE_WINTER)).append("</p>\n");
      return out.append("</body></html>\n").toString();
    }
    if (card.rules().isEmpty()) {
      out.append("<p>No simple rule is worth what it asks for in this house.</p>\n");
    }
    out.append("<ol>\n");
    for (Told told : card.rules()) {
      out.append("<li><strong>").append(escaped(told.rule().words())).append("</strong>");
      out.append(" <span>")
          .append(escaped(RulesText.price(card, told.tried())))
          .append("</span></li>\n");
    }
    out.append("</ol>\n");
    for (String line : RulesText.reading(card)) {
      out.append("<p class=\"small\">").append(escaped(line)).append("</p>\n");
    }
    return out.append("</body></html>\n").toString();
  }

  private static String escaped(String words) {
    return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
