package greyspell.handover;

/** Writes well-formed HTML: every text is escaped, every element is closed. */
final class Markup {
  private final StringBuilder out = new StringBuilder(200_000);

  /** A start tag with attributes: name, value, name, value. */
  Markup open(String tag, String... attributes) {
    out.append('<').append(tag);
    for (int k = 0; k + 1 < attributes.length; k += 2) {
      if (!attributes[k + 1].isEmpty()) {
        out.append(' ').append(attributes[k]).append("=\"");
        escape(attributes[k + 1]);
        out.append('"');
      }
    }
    out.append('>');
    return this;
  }

  Markup close(String tag) {
    out.append("</").append(tag).append(">\n");
    return this;
  }

  Markup empty(String tag, String... attributes) {
    open(tag, attributes);
    out.insert(out.length() - 1, '/');
    return this;
  }

  Markup text(String words) {
    escape(words);
    return this;
  }

  /** One element with nothing but text. */
  Markup element(String tag, String words, String... attributes) {
    return open(tag, attributes).text(words).close(tag);
  }

  /** What is markup already: pictures, style, script. */
  Markup raw(String markup) {
    out.append(markup);
    return this;
  }

  private void escape(String words) {
    for (int i = 0; i < words.length(); i++) {
      char c = words.charAt(i);
      switch (c) {
        case '&' -> out.append("&amp;");
        case '<' -> out.append("&lt;");
        case '>' -> out.append("&gt;");
        case '"' -> out.append("&quot;");
        default -> out.append(c < 32 || c == 0xFFFE || c == 0xFFFF ? ' ' : c);
      }
    }
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
