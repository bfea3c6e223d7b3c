package rutbook.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rutbook.notebook.Bench;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookId;
import rutbook.notebook.Renewed;
import rutbook.notebook.Scope;
import rutbook.notebook.StepId;
import rutbook.rebuild.Jobs;
import rutbook.rebuild.Step;
import rutbook.rebuild.StepKind;
import rutbook.samples.Samples;

/** What is looked at of rebuilds: the pages, and each kind of step that looks different. */
final class BenchViews {
  private static final List<StepKind> OF_A_FORK =
      List.of(
          StepKind.COUNT,
          StepKind.BLEED_AIR,
          StepKind.LOOSEN_CAPS,
          StepKind.DRAIN,
          StepKind.ROD_RETURNS,
          StepKind.FILL,
          StepKind.PLACE_FILL,
          StepKind.TOTAL,
          StepKind.ASSEMBLE,
          StepKind.PINCH_LAST,
          StepKind.RACE_SAG,
          StepKind.SHAKE_DOWN,
          StepKind.CONFIRM);
  private static final List<StepKind> OF_A_SHOCK =
      List.of(
          StepKind.NOTE_PRELOAD,
          StepKind.SHOP_SHEET,
          StepKind.SHOP_RETURN,
          StepKind.SHOP_GAS,
          StepKind.SHOP_FOUND,
          StepKind.LINKAGE,
          StepKind.PLACE_PRELOAD,
          StepKind.PLACE_CLICKER);

  private final List<Pictures.View> views = new ArrayList<>();
  private final Notebook season = Samples.season();

  private BenchViews() {}

  static List<Pictures.View> all() {
    BenchViews all = new BenchViews();
    all.pages();
    all.steps();
    all.otherBikes();
    all.results();
    return all.views;
  }

  private void page(String name, Notebook notebook, Place place, String... touched) {
    views.add(
        new Pictures.View(
            name,
            notebook,
            shown -> {
              shown.go(place);
              shown.touch(touched);
            }));
  }

  private void step(String name, Notebook begun, StepKind kind) {
    page(
        name,
        BenchJobs.walkedTo(begun, step -> step.kind() == kind),
        new Place.Bench(BenchJobs.JOB, Optional.empty()));
  }

  private void pages() {
    Notebook begun = fork();
    Notebook late = BenchJobs.walkedTo(begun, step -> step.kind() == StepKind.CONFIRM);
    page("rebuild-empty", Notebook.empty(new NotebookId("empty")), new Place.Rebuild());
    page(
        "rebuild-nobaseline",
        Notebook.of(new NotebookId("bare"), Bench.shelf(), List.of(), List.of(), season.display()),
        new Place.Rebuild(),
        "rebuild-new");
    page("next", season, new Place.Next());
    page("next-known", season, new Place.Next(), "next-known");
    page("rebuild", season, new Place.Rebuild());
    page("rebuild-one", season, new Place.Rebuild(), "back-one");
    page("rebuild-new", season, new Place.Rebuild(), "rebuild-new");
    page("rebuild-meter", season, new Place.Rebuild(), "service-meter");
    page("rebuild-plan", begun, new Place.Job(BenchJobs.JOB));
    page("rebuild-paper", begun, new Place.Paper(BenchJobs.JOB));
    page("rebuild-days", late, new Place.Paper(BenchJobs.JOB), "paper-days", "paper-out");
    page("rebuild-late", late, new Place.Job(BenchJobs.JOB));
    page("rebuild-open", late, new Place.Rebuild());
  }

  private Notebook fork() {
    return BenchJobs.begun(
        season, season.bikes().get(0).id(), Scope.FORK, Renewed.OIL, Renewed.SEALS);
  }

  private void steps() {
    for (StepKind kind : OF_A_FORK) {
      step("bench-" + slug(kind), fork(), kind);
    }
    page(
        "bench-cannot",
        BenchJobs.walkedTo(fork(), step -> step.kind() == StepKind.DRAIN),
        new Place.Bench(BenchJobs.JOB, Optional.empty()),
        "bench-cannot");
    Notebook shock = BenchJobs.begun(season, season.bikes().get(0).id(), Scope.SHOCK, Renewed.OIL);
    for (StepKind kind : OF_A_SHOCK) {
      step("bench-" + slug(kind), shock, kind);
    }
  }

  private static String slug(StepKind kind) {
    return kind.name().toLowerCase(Locale.ROOT);
  }

  private void otherBikes() {
    Notebook air =
        BenchJobs.begun(
            BenchJobs.of(Jobs.air(), Jobs.airSetup()), Bench.BIKE, Scope.FORK, Renewed.OIL);
    step("bench-air_note", air, StepKind.AIR_NOTE);
    step("bench-air_release", air, StepKind.AIR_RELEASE);
    step("bench-place_air", air, StepKind.PLACE_AIR);
    Notebook split = Samples.splitFork();
    Notebook begun = BenchJobs.begun(split, split.bikes().get(0).id(), Scope.FORK, Renewed.OIL);
    step("bench-split_total", begun, StepKind.TOTAL);
    StepId count =
        BenchJobs.plan(begun).steps().stream()
            .filter(each -> each.kind() == StepKind.COUNT)
            .map(Step::id)
            .findFirst()
            .orElseThrow();
    page("bench-split_count", begun, new Place.Bench(BenchJobs.JOB, Optional.of(count)));
  }

  private void results() {
    String[] names = {"back", "repeat", "notback"};
    int[] ratings = {1, 4, 4};
    int[] motos = {1, 1, 2};
    for (int i = 0; i < names.length; i++) {
      page(
          "bench-verdict-" + names[i],
          BenchJobs.confirmed(ratings[i], motos[i]),
          new Place.Bench(BenchJobs.JOB, Optional.empty()));
    }
  }
}
