package greyspell.chart;

import greyspell.electrical.Equipment;
import greyspell.electrical.StringJudge;
import greyspell.electrical.StringJudgement;
import greyspell.electrical.Wanted;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;

/** Writes pictures of strings into a folder, to look at them. */
public final class LookAtStrings {
  private LookAtStrings() {}

  static Map<String, StringJudgement> samples() {
    var rules = Equipment.rules(-22.0, 36.0);
    var wide = Equipment.controller(1, 200.0, 120.0, 450.0, 150.0, 500.0, 40.0);
    var small = Equipment.controller(1, 20.0, 15.0, 28.0, 17.0, 30.0, 15.0);
    return Map.of(
        "strings-250",
        StringJudge.judge(Equipment.M410, Equipment.c250(), rules, Wanted.modules(12)),
        "strings-150",
        StringJudge.judge(Equipment.M410, Equipment.c150(), rules, Wanted.modules(6)),
        "strings-wide",
        StringJudge.judge(Equipment.M410, wide, rules, Wanted.modules(24)),
        "strings-none",
        StringJudge.judge(Equipment.M410, small, rules, Wanted.modules(4)),
        "strings-one",
        StringJudge.judge(Equipment.M410, Equipment.c150(), rules, Wanted.modules(1)));
  }

  public static void main(String[] args) throws Exception {
    Path dir = Files.createDirectories(Path.of(args[0]));
    for (var sample : samples().entrySet()) {
      Picture picture = Objects.requireNonNull(StringsPicture.of(sample.getValue()));
      Files.writeString(dir.resolve(sample.getKey() + ".svg"), Pictures.svg(picture));
      Files.write(dir.resolve(sample.getKey() + ".png"), Pictures.png(picture));
    }
  }
}
