package greyspell.handover;

import greyspell.chart.HandoverPictures.Both;
import greyspell.study.PlayGrid;
import java.util.List;

/** One piece of a page, in words that are ready to print. */
sealed interface Block {
  /**
   * A heading.
   *
   * @param level 2 for a section, 3 within one
   * @param id where links lead, empty for none
   */
  record Heading(int level, String text, String id) implements Block {
    static Heading section(String text, String id) {
      return new Heading(2, text, id);
    }

    static Heading part(String text) {
      return new Heading(3, text, "");
    }
  }

  /**
   * A paragraph.
   *
   * @param kind class of the style sheet: "", "small", "headline", "safety"
   */
  record Text(String text, String kind) implements Block {
    static Text of(String text) {
      return new Text(text, "");
    }

    static Text small(String text) {
      return new Text(text, "small");
    }

    static Text safety(String text) {
      return new Text(text, "safety");
    }
  }

  /** What stands in a frame at the top: the verdict. */
  record Verdict(String headline, List<String> more, boolean isServed) implements Block {
    public Verdict {
      more = List.copyOf(more);
    }
  }

  record Items(List<String> items) implements Block {
    public Items {
      items = List.copyOf(items);
    }
  }

  /** Words and what belongs to them. */
  record Facts(List<Fact> facts) implements Block {
    public Facts {
      facts = List.copyOf(facts);
    }
  }

  record Fact(String word, String text) {}

  /**
   * Rows under a head.
   *
   * @param caption what it holds, for those who hear it read; never empty
   * @param isText all columns hold words, else only the first
   */
  record Table(String caption, List<String> head, List<Row> rows, boolean isText) implements Block {
    public Table {
      head = List.copyOf(head);
      rows = List.copyOf(rows);
    }
  }

  /** A marked row is set apart. */
  record Row(List<String> cells, boolean isMarked) {
    public Row {
      cells = List.copyOf(cells);
    }

    static Row of(String... cells) {
      return new Row(List.of(cells), false);
    }
  }

  /**
   * A picture and the table of its figures, which a screen shows on demand. Paper takes the picture
   * that fits a column.
   */
  record Figure(Both pictures, Table figures) implements Block {}

  /** Lines to write on. */
  record SignLines(List<String> lines) implements Block {
    public SignLines {
      lines = List.copyOf(lines);
    }
  }

  /** What answers at once on a screen, and a table of a part of it on paper and without scripts. */
  record Play(PlayGrid grid, Table table) implements Block {}

  /** The second column of the client's sheet begins. */
  record NewColumn() implements Block {}

  /** Paper begins anew. */
  record NewPage() implements Block {}
}
