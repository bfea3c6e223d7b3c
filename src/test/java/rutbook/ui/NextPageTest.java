package rutbook.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.framework.junit5.ApplicationTest;
import rutbook.edit.Editor;
import rutbook.json.RulesJson;
import rutbook.notebook.Answer;
import rutbook.notebook.BikeId;
import rutbook.notebook.Change;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.EventKind;
import rutbook.notebook.Head;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookId;
import rutbook.notebook.Role;
import rutbook.notebook.Timeline;
import rutbook.reasoning.NextChange;
import rutbook.reasoning.Past;
import rutbook.reasoning.Suggestion;

/** The next change on its page: taken into the next moto, put off with a reason, passed gates. */
class NextPageTest extends ApplicationTest {
  private static final Notebook SEASON = RiddenSuggestions.SEASON;
  private static final BikeId BIKE = SEASON.bikes().get(0).id();
  private static final LocalDate LAST = Timeline.of(SEASON, BIKE).lastDay().orElseThrow();
  private Stage stage;
  private Editor editor;
  private Scene scene;
  private Window window;

  @Override
  public void start(Stage first) {
    stage = first;
    open(SEASON, LAST);
  }

  private void open(Notebook notebook, LocalDate today) {
    editor = new Editor(notebook);
    window = Window.start(stage, StandIns.services(editor, today));
    scene = stage.getScene();
    window.go(new Place.Next());
    scene.getRoot().applyCss();
  }

  private void touch(String id) {
    interact(
        () -> {
          scene.getRoot().applyCss();
          assertThat(scene.lookup("#" + id)).as(id).isInstanceOf(ButtonBase.class);
          ((ButtonBase) scene.lookup("#" + id)).fire();
        });
  }

  private static Suggestion best() {
    return NextChange.of(SEASON, BIKE, RulesJson.ofTheTrade()).best().orElseThrow();
  }

  private <T extends Entry> T latest(Class<T> kind) {
    return Timeline.of(editor.present(), BIKE).latest(kind).orElseThrow();
  }

  @Test
  void aSuggestionTakenOnTheDayIsTheNextMotosOnlyChange() {
    Suggestion best = best();
    int motos = latest(Entry.Session.class).motos().size();
    touch("take-0");
    Entry.Session session = latest(Entry.Session.class);
    assertThat(session.motos()).hasSize(motos + 1);
    Change change = session.motos().get(motos).changes().get(0);
    assertThat(session.motos().get(motos).changes()).hasSize(1);
    assertThat(change.setting()).isEqualTo(best.setting().id());
    assertThat(change.to()).isEqualTo(best.to());
    Entry.Advice advice = latest(Entry.Advice.class);
    assertThat(change.proposal()).contains(advice.proposals().get(0).id());
    assertThat(advice.proposals().get(0).answer())
        .isEqualTo(new Answer.Accepted(session.motos().get(motos).id()));
    interact(editor::undo);
    assertThat(editor.present()).isEqualTo(SEASON);
  }

  @Test
  void onAnotherDayItIsAChangeBetweenSessions() {
    interact(() -> open(SEASON, LAST.plusDays(3)));
    touch("take-0");
    assertThat(latest(Entry.Adjusted.class).changes().get(0).to()).isEqualTo(best().to());
    assertThat(latest(Entry.Adjusted.class).day()).isEqualTo(LAST.plusDays(3));
  }

  @Test
  void notNowIsKeptWithItsReason() {
    touch("not-now-0");
    touch("why-time");
    assertThat(latest(Entry.Advice.class).proposals().get(0).answer())
        .isEqualTo(new Answer.Declined("No time today"));
    interact(() -> scene.getRoot().applyCss());
    assertThat(scene.lookup("#take-0")).as("it is not put again today").isNull();
    assertThat(scene.lookup("#take-1")).isNotNull();
    interact(editor::undo);
    interact(() -> scene.getRoot().applyCss());
    assertThat(scene.lookup("#take-0")).isNotNull();
  }

  @Test
  void evidenceLeadsToTheSessionsAndTheLedgerOpens() {
    touch("evidence-0");
    touch("next-known");
    interact(() -> scene.getRoot().applyCss());
    assertThat(scene.lookup("#ledger")).isNotNull();
  }

  @Test
  void everySuggestionOpensItsMotosAndTheCurveThatItMoves() {
    List<Suggestion> all = NextChange.of(SEASON, BIKE, RulesJson.ofTheTrade()).suggestions();
    for (int i = 0; i < all.size(); i++) {
      int place = i;
      touch("evidence-" + i);
      Node card = scene.lookup("#suggestion-" + i);
      interact(() -> scene.getRoot().applyCss());
      long ways =
          card.lookupAll(".key").stream()
              .filter(key -> key.getId() != null && key.getId().startsWith("trial-"))
              .count();
      assertThat(ways)
          .as("motos of %s", all.get(place).setting().name())
          .isEqualTo(all.get(i).shifts().stream().mapToLong(each -> each.trials().size()).sum());
      Role role = all.get(i).setting().role();
      assertThat(card.lookup("#moved-curve") != null)
          .as("curve of %s", all.get(i).setting().name())
          .isEqualTo(role == Role.FORK_OIL);
    }
  }

  /** The latest day of the season after which another fill was suggested. */
  private Notebook whenOilWasSuggested() {
    List<Entry.Session> sessions = Timeline.of(SEASON, BIKE).sessions();
    for (int i = sessions.size() - 1; i >= 0; i--) {
      Notebook then = Past.upTo(SEASON, sessions.get(i), sessions.get(i).motos().size());
      if (NextChange.of(then, BIKE, RulesJson.ofTheTrade()).suggestions().stream()
          .anyMatch(each -> each.setting().role() == Role.FORK_OIL)) {
        return then;
      }
    }
    throw new AssertionError("no fill was ever suggested in the season");
  }

  @Test
  void anotherFillShowsTheCurveThatItMoves() {
    Notebook then = whenOilWasSuggested();
    interact(() -> open(then, LAST));
    List<Suggestion> all = NextChange.of(then, BIKE, RulesJson.ofTheTrade()).suggestions();
    int place = 0;
    while (all.get(place).setting().role() != Role.FORK_OIL) {
      place++;
    }
    touch("evidence-" + place);
    assertThat(scene.lookup("#suggestion-" + place).lookup("#moved-curve")).isNotNull();
  }

  @Test
  void whereNothingIsToBeChangedItSaysWhatInsteadAndLeadsThere() {
    Notebook noRide =
        Notebook.of(SEASON.id(), SEASON.shelf(), List.of(), List.of(), SEASON.display());
    interact(() -> open(noRide, LAST));
    assertThat(scene.lookup("#next-instead")).isNotNull();
    touch("instead-log");
    assertThat(scene.lookup("#log-page")).isNotNull();
    Entry.Event crash =
        new Entry.Event(
            Head.of(new EntryId("crash"), BIKE, LAST, 900),
            EventKind.CRASH,
            Optional.empty(),
            Optional.empty(),
            "");
    interact(() -> open(SEASON.with(crash), LAST));
    assertThat(scene.lookup("#suggestion-0")).isNull();
    touch("instead-history");
    assertThat(scene.lookup("#event-sound")).isNotNull();
  }

  @Test
  void whatComesFirstIsPassedOnlyWithAReason() {
    NextChange next = NextChange.of(SEASON, BIKE, RulesJson.ofTheTrade());
    String gate = next.gates().get(0).gate().name();
    touch("gate-pass-" + gate);
    interact(
        () -> {
          TextField why = (TextField) scene.lookup("#gate-why");
          why.fireEvent(new javafx.event.ActionEvent());
          assertThat(editor.present()).isEqualTo(SEASON);
          why.setText("done yesterday, not noted");
          why.fireEvent(new javafx.event.ActionEvent());
        });
    assertThat(latest(Entry.GateDismissed.class).reason()).isEqualTo("done yesterday, not noted");
  }

  @Test
  void anEmptyNotebookSaysWhatIsMissing() {
    interact(() -> open(Notebook.empty(new NotebookId("empty")), LAST));
    assertThat(((Label) scene.lookup("#next-after")).getText()).contains("no bike");
  }
}
