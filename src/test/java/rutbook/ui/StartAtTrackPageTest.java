package rutbook.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.ToggleButton;
import org.junit.jupiter.api.Test;
import rutbook.edit.ShelfEdit;
import rutbook.json.RulesJson;
import rutbook.notebook.Bike;
import rutbook.notebook.Change;
import rutbook.notebook.Conditions;
import rutbook.notebook.Entry;
import rutbook.notebook.Ground;
import rutbook.notebook.Notebook;
import rutbook.notebook.Timeline;
import rutbook.notebook.Track;
import rutbook.notebook.TrackId;
import rutbook.notebook.Work;
import rutbook.reasoning.StartAtTrack;
import rutbook.samples.Samples;
import rutbook.units.Amount;
import rutbook.units.Length;

/** What to start with at a track that was never ridden: chosen setting by setting, in the Log. */
class StartAtTrackPageTest extends WindowTest {
  private static final Track NEVER =
      new Track(
          new TrackId("hazel-pit"),
          "Hazel Pit",
          Optional.of(Ground.SAND),
          Optional.of(Amount.of(12, Length.METRE)),
          "");
  private static final Notebook SEASON = new ShelfEdit.PutTrack(NEVER).applyTo(Samples.season());
  private static final Bike BIKE = SEASON.bikes().get(0);

  @Override
  protected Optional<Notebook> notebook() {
    return Optional.empty();
  }

  private void choose(String track) {
    interact(
        () -> {
          editor = new rutbook.edit.Editor(SEASON);
          window =
              Window.start(
                  stage,
                  StandIns.services(
                      editor,
                      Timeline.of(SEASON, BIKE.id()).lastDay().orElseThrow().plusDays(7),
                      look(1280, 800)));
        });
    settle();
    touch("log-new");
    interact(() -> ((ComboBox<?>) node("new-track")).getEditor().setText(track));
    settle();
  }

  private <T extends Entry> T latest(Class<T> kind) {
    return Timeline.of(editor.present(), BIKE.id()).latest(kind).orElseThrow();
  }

  private List<ToggleButton> takes() {
    Set<Node> keys = node("start-choice").lookupAll(".toggle-button");
    return keys.stream().map(ToggleButton.class::cast).toList();
  }

  @Test
  void whatIsTakenAlongIsMovedBeforeTheSessionAndTheSessionStartsWithIt() {
    StartAtTrack start =
        StartAtTrack.of(SEASON, BIKE.id(), NEVER, Conditions.NOT_NOTED, RulesJson.ofTheTrade());
    choose(NEVER.name());
    touch("new-start-with");
    assertThat(text("start-like")).contains("Most like it");
    assertThat(takes()).isNotEmpty();
    touch("new-start");
    Entry.Session session = latest(Entry.Session.class);
    assertThat(session.track()).isEqualTo(NEVER.id());
    List<Change> moved = latest(Entry.Adjusted.class).changes();
    assertThat(moved).isNotEmpty();
    for (StartAtTrack.From from : start.settings()) {
      boolean goesAlong =
          from.setting().work() == Work.TRACKSIDE || from.setting().work() == Work.PADDOCK;
      if (goesAlong) {
        assertThat(session.start().reading(from.setting().id()))
            .as(from.setting().name())
            .hasValueSatisfying(it -> assertThat(it.sameAs(from.reading())).isTrue());
      }
    }
    assertThat(latest(Entry.Adjusted.class).head().order()).isLessThan(session.head().order());
    interact(editor::undo);
    assertThat(editor.present()).as("one step").isEqualTo(SEASON);
  }

  @Test
  void whatIsLeftStaysAsTheBikeWasLeft() {
    choose(NEVER.name());
    touch("new-start-with");
    interact(() -> takes().forEach(each -> each.setSelected(false)));
    touch("new-start");
    Entry.Session session = latest(Entry.Session.class);
    assertThat(session.start())
        .isEqualTo(rutbook.edit.SessionStart.asLeft(SEASON, BIKE, session.day()));
    assertThat(Timeline.of(editor.present(), BIKE.id()).entries(Entry.Adjusted.class))
        .isEqualTo(Timeline.of(SEASON, BIKE.id()).entries(Entry.Adjusted.class));
  }

  @Test
  void aTrackThatNobodyKnowsYetHasAStartTooAndIsKeptOnTheShelf() {
    choose("Mill Lane");
    touch("new-start-with");
    assertThat(text("start-like")).isNotBlank();
    touch("new-start");
    assertThat(editor.present().shelf().tracks()).extracting(Track::name).contains("Mill Lane");
  }

  @Test
  void withoutAskingTheBikeStartsAsItWasLeft() {
    choose(NEVER.name());
    Labeled begin = (Labeled) node("new-start");
    assertThat(begin.getText()).isEqualTo("Start");
    touch("new-start");
    Entry.Session session = latest(Entry.Session.class);
    assertThat(session.start())
        .isEqualTo(rutbook.edit.SessionStart.asLeft(SEASON, BIKE, session.day()));
  }
}
