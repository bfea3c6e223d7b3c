package rutbook.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The map of DEVELOPERS.md: which package may know which, under one root. */
final class Layers {
  /** These return facts, never sentences, and know no toolkit, disk or clock. */
  static final List<String> PURE =
      List.of(
          "units",
          "notebook",
          "physics",
          "stats",
          "figures",
          "compare",
          "reasoning",
          "rebuild",
          "share",
          "search");

  private static final Map<String, Row> MAP =
      new TreeMap<>(
          Map.ofEntries(
              row("units"),
              row("notebook", "units"),
              row("physics"),
              row("stats"),
              row("figures", "physics", "notebook", "units"),
              row("compare", "figures", "stats", "notebook", "units"),
              row("reasoning", "figures", "stats", "notebook", "units"),
              row("rebuild", "reasoning", "figures", "stats", "notebook", "units"),
              row("share", "compare", "notebook", "units"),
              row("search", "notebook"),
              row("drawing", "notebook", "units", "physics"),
              row("edit", "notebook", "units"),
              row(
                  "json",
                  "notebook",
                  "units",
                  "compare",
                  "rebuild",
                  "reasoning",
                  "figures",
                  "imports",
                  "share",
                  "search"),
              row("file"),
              row("imports", "edit", "notebook", "units"),
              Map.entry(
                  "words",
                  new Row(
                      Set.of(
                          "compare",
                          "reasoning",
                          "rebuild",
                          "figures",
                          "stats",
                          "share",
                          "imports",
                          "notebook",
                          "units",
                          "drawing"),
                      Set.of(
                          "edit.Edit", "file.FileFault", "json.JsonException", "json.JsonFault"))),
              row(
                  "report",
                  "words",
                  "drawing",
                  "compare",
                  "rebuild",
                  "figures",
                  "notebook",
                  "units"),
              allBut("cli", "ui", "app"),
              allBut("ui", "file", "cli", "json", "report", "app"),
              allBut("app")));

  private record Row(Set<String> layers, Set<String> types) {}

  private final String root;

  Layers(String root) {
    this.root = root;
  }

  private static Map.Entry<String, Row> row(String name, String... known) {
    return Map.entry(name, new Row(Set.of(known), Set.of()));
  }

  private static Map.Entry<String, Row> allBut(String name, String... unknown) {
    Set<String> known =
        Stream.concat(
                PURE.stream(),
                Stream.of(
                    "words", "drawing", "edit", "imports", "json", "file", "report", "cli", "ui",
                    "app"))
            .filter(layer -> !Arrays.asList(unknown).contains(layer))
            .collect(Collectors.toUnmodifiableSet());
    return Map.entry(name, new Row(known, Set.of()));
  }

  static Set<String> names() {
    return MAP.keySet();
  }

  /** The layer that a class lies in; empty for classes outside the root. */
  Optional<String> of(JavaClass type) {
    String name = type.getPackageName();
    if (!name.startsWith(root + ".")) {
      return Optional.empty();
    }
    String rest = name.substring(root.length() + 1);
    return Optional.of(rest.contains(".") ? rest.substring(0, rest.indexOf('.')) : rest);
  }

  /** One row of the map as a rule. */
  ArchRule arrowsOf(String layer) {
    return classes()
        .that()
        .resideInAPackage(in(layer))
        .should(knowOnly(layer, MAP.get(layer)))
        .as("%s knows only what the map allows".formatted(layer));
  }

  private ArchCondition<JavaClass> knowOnly(String layer, Row row) {
    return new ArchCondition<>("know only " + new java.util.TreeSet<>(row.layers())) {
      @Override
      public void check(JavaClass type, ConditionEvents events) {
        for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
          JavaClass target = dependency.getTargetClass().getBaseComponentType();
          Optional<String> other = of(target);
          if (other.isPresent() && !isAllowed(layer, row, other.get(), target)) {
            events.add(SimpleConditionEvent.violated(type, dependency.getDescription()));
          }
        }
      }
    };
  }

  private boolean isAllowed(String layer, Row row, String other, JavaClass target) {
    return other.equals(layer)
        || row.layers().contains(other)
        || row.types().stream().anyMatch(name -> isType(target, root + "." + name))
        || isAnswer(row, other, target);
  }

  private static boolean isType(JavaClass target, String name) {
    return target.getFullName().equals(name)
        || target.getFullName().startsWith(name + "$")
        || target.isAssignableTo(name);
  }

  /** What figures hands on as physics gave it: who may ask may read the answer. */
  private static boolean isAnswer(Row row, String other, JavaClass target) {
    boolean value = target.isRecord() || target.isEnum() || target.isInterface();
    return other.equals("physics") && row.layers().contains("figures") && value;
  }

  String in(String... path) {
    return root + "." + String.join(".", path) + "..";
  }

  String[] inAll(List<String> layers) {
    return layers.stream().map(this::in).toArray(String[]::new);
  }

  String root() {
    return root;
  }
}
