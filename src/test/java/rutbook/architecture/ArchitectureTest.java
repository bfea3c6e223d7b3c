package rutbook.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The program keeps to the map of DEVELOPERS.md, and every rule is seen to fail on an offender. */
class ArchitectureTest {
  private static final JavaClasses PROGRAM =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("rutbook");
  private static final JavaClasses OFFENDERS =
      new ClassFileImporter().importPackages("rutbook.offenders");

  static List<Rules.Rule> rules() {
    return Rules.under("rutbook");
  }

  static List<Rules.Rule> rulesOfTheFixture() {
    return Rules.under("rutbook.offenders");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rules")
  void theProgramKeepsEveryRule(Rules.Rule rule) {
    rule.rule().check(PROGRAM);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rulesOfTheFixture")
  void everyRuleFailsOnItsOffender(Rules.Rule rule) {
    List<String> found = rule.rule().evaluate(OFFENDERS).getFailureReport().getDetails();
    assertThat(found).as("what the rule finds").anyMatch(line -> names(line, rule.offender()));
  }

  private static boolean names(String line, String offender) {
    return line.matches("(?s).*\\b" + offender + "\\b.*");
  }

  @Test
  void everyPackageIsOnTheMapAndNoneIsEmpty() {
    Layers layers = new Layers("rutbook");
    Set<String> there =
        PROGRAM.stream()
            .map((JavaClass type) -> layers.of(type).orElse("(the root package)"))
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(there).isEqualTo(Layers.names());
  }

  @Test
  void everyOffenderIsAskedFor() {
    Set<String> asked =
        rulesOfTheFixture().stream().map(Rules.Rule::offender).collect(Collectors.toSet());
    asked.add("SomePage"); // stands still and is known
    assertThat(OFFENDERS.stream().map(JavaClass::getSimpleName)).allMatch(asked::contains);
  }
}
