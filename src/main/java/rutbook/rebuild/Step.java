package rutbook.rebuild;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rutbook.notebook.Setting;
import rutbook.notebook.Side;
import rutbook.notebook.StepId;

/**
 * One thing to do: what it is about, its values, what to enter, what must be done before it, what
 * must be said at it, and the step to begin again from when it does not come out.
 */
public record Step(
    StepId id,
    StepKind kind,
    Subject subject,
    Goal goal,
    Ask ask,
    Set<StepId> after,
    List<Caution> cautions,
    Optional<StepId> otherwise) {
  public Step {
    after = Set.copyOf(after);
    cautions = List.copyOf(cautions);
    if (after.contains(id)) {
      throw new IllegalArgumentException("step before itself: " + id);
    }
  }

  /** A step to be ticked, with the cautions of its kind. */
  static Step of(StepKind kind, Subject subject) {
    return new Step(
        id(kind, subject),
        kind,
        subject,
        Goal.NONE,
        Ask.TICK,
        Set.of(),
        kind.cautions(),
        Optional.empty());
  }

  static StepId id(StepKind kind, Subject subject) {
    if (kind.places()) {
      return StepId.placing(subject.setting().orElseThrow().id());
    }
    if (kind == StepKind.SHOP_FOUND) {
      return StepId.finding(subject.setting().orElseThrow().id());
    }
    StringBuilder text = new StringBuilder(kind.slug());
    subject.setting().ifPresent(setting -> text.append(':').append(setting.id()));
    subject.leg().ifPresent(leg -> text.append(':').append(slug(leg)));
    if (subject.leg().isEmpty() && hasColon(subject)) {
      text.append(":bike"); // so that setting a:left is not taken for the left leg of setting a
    }
    return new StepId(text.toString());
  }

  private static boolean hasColon(Subject subject) {
    return subject.setting().map(setting -> setting.id().text().contains(":")).orElse(false);
  }

  private static String slug(Side leg) {
    return leg.name().toLowerCase(Locale.ROOT);
  }

  public Optional<Setting> setting() {
    return subject.setting();
  }

  public Optional<Side> leg() {
    return subject.leg();
  }

  public Optional<Target> target() {
    return goal.target();
  }

  public Place place() {
    return kind.place();
  }

  Step with(Goal newGoal) {
    return new Step(id, kind, subject, newGoal, ask, after, cautions, otherwise);
  }

  Step asking(Ask newAsk) {
    return new Step(id, kind, subject, goal, newAsk, after, cautions, otherwise);
  }

  Step after(Set<StepId> before) {
    Set<StepId> all = new LinkedHashSet<>(after);
    all.addAll(before);
    return new Step(id, kind, subject, goal, ask, all, cautions, otherwise);
  }

  Step cautioned(Caution caution) {
    List<Caution> all = new ArrayList<>(cautions);
    all.add(caution);
    return new Step(id, kind, subject, goal, ask, after, all, otherwise);
  }

  Step otherwise(StepId again) {
    return new Step(id, kind, subject, goal, ask, after, cautions, Optional.of(again));
  }

  @Override
  public String toString() {
    return id + " after " + after.stream().map(StepId::text).sorted().collect(Collectors.toList());
  }
}
