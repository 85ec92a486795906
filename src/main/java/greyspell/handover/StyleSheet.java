package greyspell.handover;

import greyspell.chart.Look;
import greyspell.chart.Look.Tone;

/** The style of the pages, made from {@link Look} and the sheets beside this class. */
final class StyleSheet {
  private StyleSheet() {}

  /** For a screen and for its print. */
  static String screen() {
    var css = new StringBuilder(":root{").append(sizes());
    tones(css, false);
    css.append("}\n@media screen and (prefers-color-scheme:dark){:root{");
    tones(css, true);
    css.append('}');
    pictures(css);
    return css.append("}\n").append(sheet("common")).append(sheet("screen")).toString();
  }

  /** For paper: no variables, since what sets the PDF knows none. */
  static String paper(Paper paper, Fit fit) {
    String css = sheet("common") + sheet("paper");
    for (Tone tone : Look.tones()) {
      css = css.replace("var(--" + tone.name() + ")", Tone.hex(tone.light()));
    }
    return css.replace("var(--space)", Look.SPACE * 0.75 + "px")
        .replace("var(--face)", "'DejaVu Sans'")
        .replace("SIDE", Paper.SIDE_MM + "mm")
        .replace("CLIENT_SIZE", fit.sizePt() + "pt")
        .replace("PARTED", fit.isParted() ? "column" : "auto")
        .replace("SIZE", paper.css())
        .replace("GAP", Paper.GAP_MM + "mm");
  }

  private static String sizes() {
    return "--face:" + Look.FACE + ";--space:" + Look.SPACE + "px;";
  }

  private static void tones(StringBuilder css, boolean isDark) {
    for (Tone tone : Look.tones()) {
      css.append("--").append(tone.name()).append(':');
      css.append(Tone.hex(isDark ? tone.dark() : tone.light())).append(';');
    }
  }

  /** On a dark screen each colour of a picture gives way to its dark fellow. */
  private static void pictures(StringBuilder css) {
    for (Tone tone : Look.tones()) {
      String light = Tone.hex(tone.light()), dark = Tone.hex(tone.dark());
      css.append("svg [fill=\"" + light + "\"]{fill:" + dark + "}");
      css.append("svg [stroke=\"" + light + "\"]{stroke:" + dark + "}");
    }
  }

  private static String sheet(String name) {
    return Resource.text(name + ".css");
  }
}
