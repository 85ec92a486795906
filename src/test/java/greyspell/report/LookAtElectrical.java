package greyspell.report;

import greyspell.electrical.Ampacity;
import greyspell.electrical.ConductorJudge;
import greyspell.electrical.Equipment;
import greyspell.electrical.Finding;
import greyspell.electrical.RunLoad;
import greyspell.electrical.StringJudge;
import greyspell.electrical.StringJudgement;
import greyspell.electrical.Wanted;
import greyspell.electrical.WireSize;
import greyspell.study.ElectricalCheck;
import greyspell.study.StringStudy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Writes the electrical texts into a folder, to read them. */
public final class LookAtElectrical {
  private LookAtElectrical() {}

  static StringJudgement twelve() {
    return StringJudge.judge(
        Equipment.M410, Equipment.c250(), Equipment.rules(-22.0, 36.0), Wanted.modules(12));
  }

  static StringJudgement unstated() {
    return StringJudge.judge(
        Equipment.M410, Equipment.c250(), Equipment.rules(null, 36.0), Wanted.modules(12));
  }

  static List<ElectricalCheck.Run> runs() {
    return List.of(
        new ElectricalCheck.Run(
            ConductorJudge.judge(
                Equipment.run(WireSize.AWG_10, 25.0, 45.0, Ampacity.Insulation.C90),
                new RunLoad(26.1, 34.8, 188.0, 350_000.0, 3_900_000.0)),
            1),
        new ElectricalCheck.Run(
            ConductorJudge.judge(
                Equipment.run(WireSize.MM2_35, 1.5, 30.0, Ampacity.Insulation.C90),
                new RunLoad(100.0, 100.0, 51.2, 900_000.0, 3_800_000.0)),
            1));
  }

  static ElectricalCheck check() {
    var built =
        StringJudge.asBuilt(
            List.of(
                Equipment.array("barn roof", Equipment.M410, 5, 2),
                Equipment.array("yard", Equipment.M410, 5, 1)),
            Equipment.c250(),
            Equipment.rules(-22.0, 36.0));
    var wires = new ArrayList<Finding>();
    runs().forEach(r -> wires.addAll(r.judged().findings()));
    return new ElectricalCheck(
        List.of(
            new ElectricalCheck.Group("Strings", built.findings(), "none"),
            new ElectricalCheck.Group("Wires", wires, "none"),
            new ElectricalCheck.Group("Motor starts", List.of(), "no surge stated")),
        runs());
  }

  public static void main(String[] args) throws Exception {
    Path dir = Files.createDirectories(Path.of(args[0]));
    Files.writeString(
        dir.resolve("strings.txt"), StringsText.of(twelve(), StringStudy.Energy.NO_WEATHER));
    Files.writeString(
        dir.resolve("unstated.txt"), StringsText.of(unstated(), StringStudy.Energy.NO_WEATHER));
    Files.writeString(dir.resolve("check.txt"), CheckText.of("Test house", check(), false));
    Files.writeString(dir.resolve("check-all.txt"), CheckText.of("Test house", check(), true));
  }
}
