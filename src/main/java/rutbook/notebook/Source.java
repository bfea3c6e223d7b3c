package rutbook.notebook;

/** Who suggested something: the coach, through a hand-over, or the notebook's own reasoning. */
public sealed interface Source {
  record Coach(HandOverId handOver, String name) implements Source {
    public Coach {
      name = Checks.name("coach", name);
    }
  }

  record Own(String ruleSet) implements Source {
    public Own {
      ruleSet = Checks.name("rule set", ruleSet);
    }
  }
}
