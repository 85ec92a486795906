package greyspell.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import greyspell.report.SweepTable;
import greyspell.sweep.SweepQuestion;
import greyspell.sweep.SweepWinters;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** docs/sweep.md defines every column of the table, in its order, and no other. */
class SweepDocTest {
  @Test
  void everyColumnIsDefined() throws IOException {
    var question =
        new SweepQuestion(
            List.of(SweepQuestion.Home.of(Path.of("scenarios", "whin-cabin.yaml"))),
            List.of(),
            false,
            SweepWinters.NOT_SAID,
            null);
    String page = Files.readString(Path.of("docs/sweep.md"));
    var defined = new ArrayList<String>();
    var row =
        Pattern.compile("(?m)^\\| `([a-z_0-9]+)` \\|")
            .matcher(page.substring(page.indexOf("## The table")));
    while (row.find()) {
      defined.add(row.group(1));
    }
    assertEquals(new SweepTable(question).columns(), defined);
  }
}
