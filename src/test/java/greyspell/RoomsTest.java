package greyspell;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The "may use" column of docs/architecture.md. A whitelist: a package without a row fails. */
class RoomsTest {
  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("greyspell");

  /** Rooms that each room may use; {@code quantity} and {@code calendar} are open to all. */
  private static final Map<String, Set<String>> ROOMS =
      Map.ofEntries(
          Map.entry("quantity", Set.of()),
          Map.entry("calendar", Set.of()),
          Map.entry("weather", Set.of()),
          Map.entry("weather.ensemble", Set.of("weather")),
          Map.entry("sky", Set.of("weather")),
          Map.entry("array", Set.of("sky", "weather")),
          Map.entry("load", Set.of("weather", "load.step")),
          Map.entry("storage", Set.of("storage.step")),
          Map.entry("power", Set.of("power.step")),
          Map.entry("storage.step", Set.of()),
          Map.entry("power.step", Set.of()),
          Map.entry("load.step", Set.of()),
          Map.entry("balance", Set.of("storage.step", "power.step", "load.step")),
          Map.entry("outcome", Set.of("balance", "storage.step", "power.step", "load.step")),
          Map.entry("cause", Set.of("balance", "outcome")),
          Map.entry("words", Set.of("cause")),
          Map.entry("sizing", Set.of("balance", "outcome", "storage.step", "power.step")),
          Map.entry("electrical", Set.of("array", "storage", "power", "load")),
          Map.entry("cause.log", Set.of("weather")),
          Map.entry(
              "scenario",
              Set.of(
                  "weather",
                  "weather.ensemble",
                  "sky",
                  "array",
                  "load",
                  "storage",
                  "power",
                  "electrical")),
          Map.entry(
              "study",
              Set.of(
                  "weather",
                  "weather.ensemble",
                  "sky",
                  "array",
                  "load",
                  "storage",
                  "storage.step",
                  "power",
                  "power.step",
                  "load.step",
                  "balance",
                  "outcome",
                  "cause",
                  "sizing",
                  "electrical",
                  "cause.log",
                  "scenario")),
          Map.entry("ladder", belowPages("study")),
          Map.entry("operate", belowPages("study")),
          Map.entry("chart", belowPages("study", "words", "ladder")),
          Map.entry(
              "sweep",
              Set.of("weather", "weather.ensemble", "sky", "electrical", "scenario", "study")),
          Map.entry(
              "report",
              belowPages("study", "words", "chart", "sweep", "ladder", "operate", "report.page")),
          Map.entry("report.page", belowPages("study", "words", "chart", "report")),
          Map.entry("handover", belowPages("study", "words", "chart", "report")),
          Map.entry(
              "cli",
              belowPages(
                  "study", "words", "chart", "sweep", "ladder", "operate", "report", "handover")));

  /** Libraries and the only rooms that may see them. */
  private static final Map<String, Set<String>> LIBRARIES =
      Map.of(
          "picocli", Set.of("cli"),
          "org.yaml.snakeyaml", Set.of("scenario"),
          "com.fasterxml.jackson", Set.of("report"),
          "net.e175.klaus", Set.of("sky"),
          "org.knowm.xchart", Set.of("chart"),
          "java.awt", Set.of("chart", "handover"),
          "tech.tablesaw", Set.of("report"),
          "gg.jte", Set.of("report", "report.page"),
          "com.openhtmltopdf", Set.of("handover"),
          "org.apache.commons.math3",
              Set.of(
                  "weather",
                  "weather.ensemble",
                  "array",
                  "load",
                  "storage",
                  "power",
                  "outcome",
                  "cause.log"));

  private static Set<String> belowPages(String... more) {
    var rooms =
        new TreeSet<>(
            Set.of(
                "weather",
                "weather.ensemble",
                "sky",
                "array",
                "load",
                "storage",
                "power",
                "balance",
                "outcome",
                "cause",
                "sizing",
                "electrical",
                "cause.log",
                "scenario"));
    rooms.addAll(Set.of(more));
    return rooms;
  }

  private static String room(JavaClass type) {
    String name = type.getPackageName();
    return name.equals("greyspell") ? "" : name.substring("greyspell.".length());
  }

  @Test
  void everyRoomUsesOnlyWhatItsRowAllows() {
    var broken = new TreeSet<String>();
    for (JavaClass type : CLASSES) {
      String from = room(type);
      assertTrue(ROOMS.containsKey(from), () -> "no row for the package of " + type.getName());
      Set<String> allowed = ROOMS.getOrDefault(from, Set.of());
      for (Dependency d : type.getDirectDependenciesFromSelf()) {
        JavaClass target = d.getTargetClass().getBaseComponentType();
        if (!target.getPackageName().startsWith("greyspell")) {
          continue;
        }
        String to = room(target);
        if (!to.equals(from)
            && !to.equals("quantity")
            && !to.equals("calendar")
            && !allowed.contains(to)) {
          broken.add(
              from + " uses " + to + ": " + type.getSimpleName() + " -> " + target.getSimpleName());
        }
      }
    }
    assertEquals(Set.of(), broken);
  }

  @Test
  void roomsHaveNoCycles() {
    slices().matching("greyspell.(*)..").should().beFreeOfCycles().check(CLASSES);
  }

  @Test
  void everyLibraryIsSeenOnlyWhereItBelongs() {
    var broken = new TreeSet<String>();
    for (JavaClass type : CLASSES) {
      for (Dependency d : type.getDirectDependenciesFromSelf()) {
        String target = d.getTargetClass().getBaseComponentType().getName();
        LIBRARIES.forEach(
            (library, rooms) -> {
              if (target.startsWith(library + ".") && !rooms.contains(room(type))) {
                broken.add(type.getName() + " sees " + library);
              }
            });
      }
    }
    assertEquals(Set.of(), broken);
  }

  /** Each forbidden call with its reason. */
  @Test
  void forbiddenCallsStayOut() {
    var broken = new TreeSet<String>();
    for (JavaClass type : CLASSES) {
      boolean isCli = room(type).equals("cli");
      type.getMethodCallsFromSelf()
          .forEach(
              call -> {
                String owner = call.getTargetOwner().getName();
                String name = call.getName();
                boolean localeMissing =
                    owner.equals("java.lang.String")
                        && name.equals("format")
                        && !call.getTarget()
                            .getRawParameterTypes()
                            .get(0)
                            .getName()
                            .equals("java.util.Locale");
                if (localeMissing
                    || (owner.equals("java.lang.String") && name.equals("formatted"))) {
                  broken.add(type.getSimpleName() + ": text without a locale differs by machine");
                }
                if (owner.equals("java.lang.Math") && name.equals("random")) {
                  broken.add(
                      type.getSimpleName() + ": random numbers come from the scenario's seed");
                }
                // "today" asks what day it is where its user did not say
                boolean isAsked = type.getSimpleName().equals("TodayCommand");
                if (name.equals("now") && owner.startsWith("java.time") && !isAsked) {
                  broken.add(
                      type.getSimpleName() + ": results do not depend on the day they are made");
                }
                if (owner.equals("java.lang.System") && name.equals("exit") && !isCli) {
                  broken.add(type.getSimpleName() + ": only cli ends the program");
                }
              });
      type.getConstructorCallsFromSelf()
          .forEach(
              call -> {
                if (call.getTargetOwner().getName().equals("java.util.Random")
                    && call.getTarget().getRawParameterTypes().isEmpty()) {
                  broken.add(
                      type.getSimpleName() + ": random numbers come from the scenario's seed");
                }
              });
      type.getFieldAccessesFromSelf()
          .forEach(
              access -> {
                String name = access.getTarget().getName();
                if (access.getTargetOwner().getName().equals("java.lang.System")
                    && (name.equals("out") || name.equals("err"))
                    && !isCli) {
                  broken.add(type.getSimpleName() + ": only cli prints");
                }
              });
    }
    assertEquals(Set.of(), broken);
  }

  @Test
  void physicsHoldsNoStaticMutableState() {
    var broken = new TreeSet<String>();
    for (JavaClass type : CLASSES) {
      type.getFields().stream()
          .filter(f -> f.getModifiers().contains(JavaModifier.STATIC))
          .filter(f -> !f.getModifiers().contains(JavaModifier.FINAL))
          .filter(f -> !room(type).equals("report.page"))
          .forEach(f -> broken.add(f.getFullName()));
    }
    assertEquals(Set.of(), broken);
  }
}
