package greyspell.handover;

import greyspell.chart.Picture;
import greyspell.chart.Pictures;
import greyspell.handover.Block.Fact;
import greyspell.handover.Block.Row;
import greyspell.words.Words;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Blocks as HTML: one form for screens, one for what sets the PDF. */
final class PageText {
  private static final String NO_NETWORK =
      "default-src 'none'; style-src 'unsafe-inline'; script-src 'unsafe-inline'";

  private final Pages pages;
  private final Words words;
  private final @Nullable Paper paper;
  private final Fit fit;
  private final boolean isPaper;
  private final Markup out = new Markup();

  private PageText(Pages pages, Words words, @Nullable Paper paper, Fit fit) {
    this.fit = fit;
    this.pages = pages;
    this.words = words;
    this.paper = paper;
    isPaper = paper != null;
  }

  /** Needs nothing but itself and asks no network. */
  static String screen(Pages pages, Words words) {
    return new PageText(pages, words, null, Fit.TRIED.get(0)).make(StyleSheet.screen());
  }

  /** Pictures are places that {@link Pdf} fills. */
  static String paper(Pages pages, Words words, Paper paper, Fit fit) {
    return new PageText(pages, words, paper, fit).make(StyleSheet.paper(paper, fit));
  }

  private String make(String style) {
    out.raw("<!DOCTYPE html>\n");
    out.open("html", "lang", words.language(), "xmlns", "http://www.w3.org/1999/xhtml");
    out.open("head").empty("meta", "charset", "utf-8");
    if (!isPaper) {
      out.empty("meta", "http-equiv", "Content-Security-Policy", "content", NO_NETWORK);
      out.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
      out.empty("meta", "name", "color-scheme", "content", "light dark");
    }
    out.element("title", pages.title());
    out.empty("meta", "name", "description", "content", pages.title());
    out.open("style").raw(style).close("style").close("head");
    out.open("body").open("main");
    if (isPaper) {
      out.element("div", pages.home(), "class", "foot-home");
    }
    out.open("section", "id", "client", "class", "client");
    out.element("h1", pages.title());
    client(pages.client());
    out.close("section");
    if (!pages.technical().isEmpty()) {
      technical();
    }
    out.close("main");
    if (!isPaper) {
      out.open("script").raw(Resource.text("play.js")).close("script");
    }
    return out.close("body").close("html").toString();
  }

  private void technical() {
    out.open("section", "id", "technical", "class", "technical");
    out.element("p", words.say("technical.title"), "class", "part-title");
    contents();
    blocks(pages.technical());
    out.close("section");
  }

  /**
   * On paper in two columns, read down and then across. What comes before the first heading and the
   * small print at the end run across both.
   */
  private void client(List<Block> blocks) {
    if (!isPaper) {
      blocks(blocks);
      return;
    }
    int first = 0, last = blocks.size();
    while (first < last && !(blocks.get(first) instanceof Block.Heading)) {
      first++;
    }
    while (last > first && blocks.get(last - 1) instanceof Block.Text) {
      last--;
    }
    blocks(blocks.subList(0, first));
    out.open("div", "class", "columns");
    blocks(blocks.subList(first, last));
    out.close("div");
    blocks(blocks.subList(last, blocks.size()));
  }

  private void contents() {
    out.open("nav", "class", "contents", "aria-label", words.say("contents.title")).open("ol");
    for (Block block : pages.technical()) {
      if (block instanceof Block.Heading h && h.level() == 2) {
        out.open("li").element("a", h.text(), "href", "#" + h.id()).close("li");
      }
    }
    out.close("ol").close("nav");
  }

  /** On paper a picture stays with the heading and the words that lead to it. */
  private void blocks(List<Block> blocks) {
    for (int k = 0; k < blocks.size(); k++) {
      int figure = isPaper ? figureLedTo(blocks, k) : k;
      if (figure > k) {
        out.open("div", "class", "kept");
        blocks.subList(k, figure + 1).forEach(this::block);
        out.close("div");
        k = figure;
      } else {
        block(blocks.get(k));
      }
    }
  }

  /** Place of the picture that follows a heading with no more than words between, else its own. */
  private static int figureLedTo(List<Block> blocks, int heading) {
    if (!(blocks.get(heading) instanceof Block.Heading)) {
      return heading;
    }
    int k = heading + 1;
    while (k < blocks.size() && blocks.get(k) instanceof Block.Text) {
      k++;
    }
    return k < blocks.size() && blocks.get(k) instanceof Block.Figure ? k : heading;
  }

  private void block(Block block) {
    if (block instanceof Block.Heading b) {
      out.element("h" + b.level(), b.text(), "id", b.id());
    } else if (block instanceof Block.Text b) {
      out.element("p", line(b.text()), "class", b.kind());
    } else if (block instanceof Block.Verdict b) {
      verdict(b);
    } else if (block instanceof Block.Items b) {
      out.open("ul");
      b.items().forEach(item -> out.element("li", line(item)));
      out.close("ul");
    } else if (block instanceof Block.Facts b) {
      facts(b.facts());
    } else if (block instanceof Block.Table b) {
      table(b);
    } else if (block instanceof Block.Figure b) {
      figure(b);
    } else if (block instanceof Block.SignLines b) {
      sign(b.lines());
    } else if (block instanceof Block.Play b) {
      play(b);
    } else if (block instanceof Block.NewColumn) {
      out.element("div", "", "class", "new-column");
    } else if (block instanceof Block.NewPage) {
      out.element("div", "", "class", "new-page");
    }
  }

  /** On paper {@link LineBreaks} sees to it. */
  private String line(String words) {
    return isPaper ? words : LineBreaks.joined(words);
  }

  private void verdict(Block.Verdict verdict) {
    out.open("div", "class", verdict.isServed() ? "verdict served" : "verdict");
    out.element("p", line(verdict.headline()), "class", "headline");
    verdict.more().forEach(more -> out.element("p", line(more)));
    out.close("div");
  }

  private void facts(List<Fact> facts) {
    out.open("table", "class", "facts").open("tbody");
    for (Fact fact : facts) {
      out.open("tr").element("th", fact.word(), "scope", "row");
      out.element("td", fact.text()).close("tr");
    }
    out.close("tbody").close("table");
  }

  private void table(Block.Table table) {
    if (!isPaper) {
      out.open(
          "div",
          "class",
          "scroll",
          "tabindex",
          "0",
          "role",
          "region",
          "aria-label",
          table.caption());
    }
    out.open("table", "class", kind(table));
    out.open("thead").open("tr");
    table.head().forEach(head -> out.element("th", head, "scope", "col"));
    out.close("tr").close("thead").open("tbody");
    for (Row row : table.rows()) {
      out.open("tr", "class", row.isMarked() ? "marked" : "");
      for (int k = 0; k < row.cells().size(); k++) {
        if (k == 0) {
          out.element("th", row.cells().get(k), "scope", "row");
        } else {
          out.element("td", row.cells().get(k));
        }
      }
      out.close("tr");
    }
    out.close("tbody").close("table");
    if (!isPaper) {
      out.close("div");
    }
  }

  /** Tables of words share their width by the number of their columns. */
  private static String kind(Block.Table table) {
    return table.isText() ? "rows words columns-" + table.head().size() : "rows";
  }

  private void figure(Block.Figure figure) {
    Picture picture = paper == null ? figure.pictures().page() : figure.pictures().column();
    if (paper != null) {
      out.open("div", "class", "figure");
      out.open(
          "object",
          "type",
          Pdf.PICTURE,
          "data",
          picture.name(),
          "title",
          picture.title(),
          "style",
          Pdf.placeOf(picture, paper, fit));
      out.close("object").close("div");
      return;
    }
    out.open("figure");
    out.open("div", "class", "wide").raw(Pictures.svg(picture)).close("div");
    out.open("div", "class", "narrow");
    out.raw(Pictures.svg(figure.pictures().column())).close("div");
    out.open("details").element("summary", words.say("figure.table"));
    table(figure.figures());
    out.close("details").close("figure");
  }

  private void sign(List<String> lines) {
    out.open("table", "class", "sign").open("tbody");
    for (String line : lines) {
      out.open("tr").element("th", line, "scope", "row").element("td", "\u00A0").close("tr");
    }
    out.close("tbody").close("table");
  }

  private void play(Block.Play play) {
    if (isPaper) {
      out.open("div", "class", "changed");
      table(play.table());
      out.close("div");
      return;
    }
    out.raw(PlayPanel.html(play.grid(), words));
    out.open("details").element("summary", words.say("play.caption"));
    table(play.table());
    out.close("details");
  }
}
