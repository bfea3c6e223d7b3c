package rutbook.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.ConcurrentMap;
import java.util.function.Predicate;

/** Every rule of the architecture under one root, each with the class that offends against it. */
final class Rules {
  /** A rule, and the simple name of the class of the fixture on which it must fail. */
  record Rule(ArchRule rule, String offender) {
    @Override
    public String toString() {
      return rule.getDescription();
    }
  }

  private static final List<String> CONTROLS_AND_GLUE = List.of("controls", "fx");

  private final Layers layers;

  private Rules(Layers layers) {
    this.layers = layers;
  }

  static List<Rule> under(String root) {
    return new Rules(new Layers(root)).all();
  }

  private List<Rule> all() {
    List<Rule> rules = new ArrayList<>();
    for (String layer : Layers.names()) {
      if (!layer.equals("app")) {
        rules.add(new Rule(layers.arrowsOf(layer), "Wide" + capital(layer)));
      }
    }
    rules.add(new Rule(noCycles(), "WideNotebook"));
    rules.addAll(libraries());
    rules.addAll(surroundings());
    rules.addAll(values());
    rules.addAll(window());
    return rules;
  }

  private static String capital(String layer) {
    return layer.substring(0, 1).toUpperCase(Locale.ROOT) + layer.substring(1);
  }

  private ArchRule noCycles() {
    return slices()
        .matching(layers.root() + ".(*)..")
        .should()
        .beFreeOfCycles()
        .as("packages make no cycle");
  }

  private List<Rule> libraries() {
    return List.of(
        new Rule(stays("Jackson", List.of("json"), "com.fasterxml.."), "PeeksIntoJson"),
        new Rule(stays("JavaFX", List.of("ui", "app"), "javafx.."), "DrawsOnTheScreen"),
        new Rule(stays("picocli", List.of("cli"), "picocli.."), "ParsesTheCommandLine"),
        new Rule(
            stays("the CSV library", List.of("imports"), "org.apache.commons.csv.."),
            "ReadsTables"),
        new Rule(
            stays("Hipparchus", List.of("stats", "physics"), "org.hipparchus.."), "Integrates"),
        new Rule(
            stays(
                "the PDF library",
                List.of("report"),
                "com.openhtmltopdf..",
                "org.apache.pdfbox..",
                "java.awt.."),
            "Prints"));
  }

  private ArchRule stays(String what, List<String> allowed, String... packages) {
    return noClasses()
        .that()
        .resideOutsideOfPackages(layers.inAll(allowed))
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(packages)
        .as(what + " stays in " + String.join(" and ", allowed));
  }

  private List<Rule> surroundings() {
    return List.of(
        new Rule(
            reaches("the disk is touched in file alone", List.of("file"), Forbidden::touchesDisk),
            "WritesFiles"),
        new Rule(
            reaches("the clock is read in app alone", List.of("app"), Forbidden::readsClock),
            "LooksAtTheClock"),
        new Rule(
            reaches("chance and ids come from app alone", List.of("app"), Forbidden::takesChance),
            "Dices"),
        new Rule(
            reaches("the program ends in app alone", List.of("app"), Forbidden::endsProgram),
            "Quits"),
        new Rule(
            reaches("the process is asked in app alone", List.of("app"), Forbidden::readsProcess),
            "Shouts"),
        new Rule(
            reaches("nothing is looked up by reflection", List.of(), Forbidden::looksUp),
            "Reflects"),
        new Rule(staticState(), "Remembers"));
  }

  private ArchRule reaches(String name, List<String> allowed, Predicate<JavaAccess<?>> forbidden) {
    return classes().should(leaveAlone(allowed, forbidden)).as(name);
  }

  private ArchCondition<JavaClass> leaveAlone(
      List<String> allowed, Predicate<JavaAccess<?>> forbidden) {
    return new ArchCondition<>("leave alone what belongs elsewhere") {
      @Override
      public void check(JavaClass type, ConditionEvents events) {
        if (layers.of(type).filter(allowed::contains).isPresent()) {
          return;
        }
        for (JavaAccess<?> access : type.getAccessesFromSelf()) {
          if (forbidden.test(access)) {
            events.add(SimpleConditionEvent.violated(access, access.getDescription()));
          }
        }
      }
    };
  }

  private static ArchRule staticState() {
    return fields()
        .that()
        .areStatic()
        .should(
            new ArchCondition<JavaField>("never change") {
              @Override
              public void check(JavaField field, ConditionEvents events) {
                if (changes(field)) {
                  events.add(SimpleConditionEvent.violated(field, field.getDescription()));
                }
              }
            })
        .as("no static state changes");
  }

  /** A constant array is private, so that its class alone can break it. */
  private static boolean changes(JavaField field) {
    JavaClass type = field.getRawType();
    boolean made = field.getModifiers().contains(JavaModifier.SYNTHETIC);
    return !made
        && (!field.getModifiers().contains(JavaModifier.FINAL)
            || type.isArray() && !field.getModifiers().contains(JavaModifier.PRIVATE)
            || type.getPackageName().equals("java.util.concurrent.atomic")
            || type.isAssignableTo(ConcurrentMap.class)
            || type.isAssignableTo(ThreadLocal.class)
            || type.isAssignableTo(StringBuilder.class)
            || type.isAssignableTo(Random.class));
  }

  private List<Rule> values() {
    return List.of(
        new Rule(
            classes()
                .that()
                .resideInAnyPackage(layers.inAll(Layers.PURE))
                .should(leaveAlone(List.of(), Forbidden::makesSentences))
                .as("pure packages return facts, never sentences"),
            "Talks"),
        new Rule(
            noClasses()
                .that()
                .resideInAnyPackage(layers.inAll(Layers.PURE))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.io..", "java.net..", "java.util.logging..")
                .as("pure packages know no streams, no network, no log"),
            "Streams"),
        new Rule(annotations(), "Decorated"));
  }

  private ArchRule annotations() {
    return classes()
        .that()
        .resideInAnyPackage(layers.inAll(Layers.PURE))
        .should(
            new ArchCondition<JavaClass>("carry no annotation of a library") {
              @Override
              public void check(JavaClass type, ConditionEvents events) {
                for (Dependency each : type.getDirectDependenciesFromSelf()) {
                  JavaClass target = each.getTargetClass();
                  if (target.isAnnotation() && !target.getPackageName().startsWith("java.")) {
                    events.add(SimpleConditionEvent.violated(type, each.getDescription()));
                  }
                }
              }
            })
        .as("pure packages carry no annotation of a library");
  }

  private List<Rule> window() {
    return List.of(
        new Rule(pagesApart(), "KnowsAnotherPage"),
        new Rule(
            noClasses()
                .that()
                .resideInAnyPackage(layers.in("ui", "controls"), layers.in("ui", "fx"))
                .should()
                .dependOnClassesThat(resideInShellOrPages())
                .as("controls and glue know neither the shell nor a page"),
            "KnowsTheShell"),
        new Rule(
            noClasses()
                .that()
                .resideOutsideOfPackage(layers.in("ui", "fx"))
                .should()
                .dependOnClassesThat()
                .haveFullyQualifiedName("javafx.application.Platform")
                .as("the toolkit is started, asked and ended in ui.fx alone"),
            "EndsTheToolkit"),
        new Rule(
            noClasses()
                .that()
                .resideOutsideOfPackages(
                    layers.in("file"), layers.in("ui", "fx"), layers.in("report"))
                .should()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.io.File")
                .as("files are named by Path but where a library wants otherwise"),
            "NamesFiles"));
  }

  private com.tngtech.archunit.base.DescribedPredicate<JavaClass> resideInShellOrPages() {
    return com.tngtech.archunit.base.DescribedPredicate.describe(
        "are the shell's or a page's",
        type -> layers.of(type).filter("ui"::equals).isPresent() && !isControlOrGlue(type));
  }

  private ArchRule pagesApart() {
    return classes()
        .that()
        .resideInAPackage(layers.in("ui"))
        .should(
            new ArchCondition<JavaClass>("not know another page") {
              @Override
              public void check(JavaClass type, ConditionEvents events) {
                for (Dependency each : type.getDirectDependenciesFromSelf()) {
                  String from = page(type);
                  String to = page(each.getTargetClass());
                  if (!from.isEmpty() && !to.isEmpty() && !from.equals(to)) {
                    events.add(SimpleConditionEvent.violated(type, each.getDescription()));
                  }
                }
              }
            })
        .as("a page knows no other page");
  }

  /** The package of a page below the window's; empty for shell, controls and glue. */
  private String page(JavaClass type) {
    String start = layers.root() + ".ui.";
    boolean below = type.getPackageName().startsWith(start);
    return below && !isControlOrGlue(type)
        ? type.getPackageName().substring(start.length()).replaceAll("\\..*", "")
        : "";
  }

  private boolean isControlOrGlue(JavaClass type) {
    return CONTROLS_AND_GLUE.stream()
        .anyMatch(
            name ->
                type.getPackageName()
                    .matches("\\Q" + layers.root() + ".ui." + name + "\\E(\\..*)?"));
  }
}
