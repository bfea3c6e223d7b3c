package rutbook.rebuild;

import org.junit.jupiter.api.Test;
import rutbook.notebook.Renewed;
import rutbook.notebook.Scope;

class PlanTest {
  @Test
  void show() {
    Jobs.ids(Jobs.plan(Scope.FORK, Renewed.OIL)).forEach(System.out::println);
    System.out.println("-----");
    Jobs.ids(Jobs.plan(Scope.BOTH, Renewed.OIL, Renewed.SPRING)).forEach(System.out::println);
    System.out.println("-----");
    Jobs.ids(Jobs.plan(Jobs.from(Jobs.split(), Jobs.splitSetup(), Jobs.splitSetup(), Scope.FORK)))
        .forEach(System.out::println);
    System.out.println("-----");
    Jobs.ids(Jobs.plan(Jobs.from(Jobs.air(), Jobs.airSetup(), Jobs.airSetup(), Scope.FORK)))
        .forEach(System.out::println);
  }
}
