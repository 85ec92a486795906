package greyspell.chart;

import greyspell.outcome.SomeWinters;
import greyspell.outcome.WinterBook;
import greyspell.outcome.WinterBook.Kind;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes pictures of many winters into a folder, to look at them. */
public final class LookAtWinters {
  private LookAtWinters() {}

  public static void main(String[] args) throws Exception {
    Path dir = Files.createDirectories(Path.of(args[0]));
    write(dir, "many", SomeWinters.book(100, 14_000.0));
    write(dir, "few", SomeWinters.book(10, 14_000.0, Kind.MEASURED));
    write(dir, "served", SomeWinters.book(40, 40_000.0));
    write(dir, "thousand", SomeWinters.book(1000, 20_000.0));
  }

  private static void write(Path dir, String which, WinterBook book) throws Exception {
    for (Picture p : WinterPictures.of(book)) {
      Files.writeString(dir.resolve(which + "-" + p.name() + ".svg"), Pictures.svg(p));
      Files.write(dir.resolve(which + "-" + p.name() + ".png"), Pictures.png(p));
    }
  }
}
