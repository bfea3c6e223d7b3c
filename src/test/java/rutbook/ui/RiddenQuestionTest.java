package rutbook.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import rutbook.edit.Editor;
import rutbook.notebook.Answer;
import rutbook.notebook.Change;
import rutbook.notebook.Entry;
import rutbook.notebook.Feel;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoId;
import rutbook.notebook.Notebook;
import rutbook.notebook.Proposal;
import rutbook.notebook.Timeline;
import rutbook.reasoning.AfterRide;
import rutbook.reasoning.Complaint;
import rutbook.reasoning.Suggestion;

/**
 * The one question after a moto with a suggestion in it: asked where it is ridden, and answered.
 */
class RiddenQuestionTest extends WindowTest {
  @Override
  protected Optional<Notebook> notebook() {
    return Optional.empty();
  }

  private void openAt(Notebook notebook, Place place) {
    openAt(notebook, place, 0);
  }

  private void openAt(Notebook notebook, Place place, int daysLater) {
    interact(
        () -> {
          editor = new Editor(notebook);
          window =
              Window.start(
                  stage,
                  StandIns.services(
                      editor, RiddenSuggestions.day().plusDays(daysLater), look(1280, 800)));
        });
    go(place);
  }

  private static Place session() {
    return new Place.Session(RiddenSuggestions.lastDay(RiddenSuggestions.SEASON).id());
  }

  private Moto last() {
    List<Moto> motos = RiddenSuggestions.lastDay(editor.present()).motos();
    return motos.get(motos.size() - 1);
  }

  private Answer answer() {
    Proposal proposal =
        ((Entry.Advice) editor.present().entry(RiddenSuggestions.ADVICE).orElseThrow())
            .proposals()
            .get(0);
    return proposal.answer();
  }

  private boolean isShown(String id) {
    Node node = scene().lookup("#" + id);
    return node != null && node.isVisible() && (node.getParent() == null || node.isManaged());
  }

  @Test
  void oneTouchSaysWhetherWhatItWasMeantToHelpIsBetter() {
    Notebook ridden = RiddenSuggestions.riddenAndNotAsked();
    AfterRide.Asked asked = RiddenSuggestions.question(ridden).asked().get(0);
    openAt(ridden, session());
    assertThat(isShown("ridden")).isTrue();
    touch("ridden-0-0");
    assertThat(touches).isEqualTo(1);
    assertThat(last().report().feel(asked.before().key()).map(Feel::severity)).contains(0);
    assertThat(((ToggleButton) node("ridden-0-0")).isSelected()).isTrue();
  }

  @Test
  void whatWasTakenBetweenTwoDaysIsAskedAfterTheFirstMotoOfTheNext() {
    Notebook ridden = RiddenSuggestions.takenBetweenAndRidden();
    AfterRide.Asked asked = RiddenSuggestions.question(ridden).asked().get(0);
    openAt(ridden, new Place.Session(RiddenSuggestions.lastDay(ridden).id()), 6);
    assertThat(isShown("ridden")).isTrue();
    touch("ridden-0-0");
    assertThat(last().report().feel(asked.before().key()).map(Feel::severity)).contains(0);
    touch("ridden-KEEP");
    assertThat(answer()).isEqualTo(new Answer.Kept(RiddenSuggestions.MOTO));
    assertThat(isShown("ridden")).isFalse();
  }

  @Test
  void theKeysAreGoneHalfAsBadTheSameAndOneWorseUnlessSomethingElseWasSaid() {
    Feel was = RiddenSuggestions.question(RiddenSuggestions.taken()).asked().get(0).before();
    assertThat(answers(was, 4, Optional.empty())).containsExactly(0, 2, 4, 5);
    assertThat(answers(was, 5, Optional.empty())).containsExactly(0, 3, 5);
    assertThat(answers(was, 1, Optional.empty())).containsExactly(0, 1, 2);
    assertThat(answers(was, 4, Optional.of(3))).containsExactly(0, 3, 4, 5);
    assertThat(answers(was, 2, Optional.of(5))).containsExactly(0, 1, 2, 5);
  }

  private static List<Integer> answers(Feel feel, int before, Optional<Integer> now) {
    return RiddenQuestion.answers(
        new AfterRide.Asked(
            Complaint.of(feel), feel.withSeverity(before), now.map(feel::withSeverity)));
  }

  @Test
  void whatIsRatedInTheFeelEntryIsNotAskedAgainButStandsAnswered() {
    Notebook rated =
        RiddenSuggestions.rated(RiddenSuggestions.riddenAndNotAsked(), RiddenSuggestions.MOTO, 0);
    openAt(rated, session());
    assertThat(((ToggleButton) node("ridden-0-0")).isSelected()).isTrue();
    assertThat(RiddenSuggestions.question(rated).hasOpenQuestion()).isFalse();
  }

  @Test
  void beforeTheRideItSaysWhatIsTriedAndAsksNothing() {
    openAt(RiddenSuggestions.taken(), session());
    assertThat(isShown("ridden")).isTrue();
    assertThat(scene().lookup("#ridden-KEEP")).isNull();
    assertThat(scene().lookup("#ridden-0")).isNull();
  }

  @Test
  void goingBackIsTheNextMotosOnlyChangeAndThenItCanBeSetAgainAndKept() {
    Suggestion best = RiddenSuggestions.best();
    Notebook rated =
        RiddenSuggestions.rated(RiddenSuggestions.riddenAndNotAsked(), RiddenSuggestions.MOTO, 0);
    openAt(rated, new Place.Next());
    touch("ridden-GO_BACK");
    assertThat(last().changes()).containsExactly(Change.of(best.setting().id(), best.from()));
    assertThat(answer()).isEqualTo(new Answer.Accepted(RiddenSuggestions.MOTO));
    interact(() -> editor.make(note(best, last().id(), 4)));
    settle();
    touch("ridden-open");
    touch("ridden-SET_AGAIN");
    assertThat(last().changes())
        .containsExactly(
            new Change(
                best.setting().id(), best.to(), Optional.of(RiddenSuggestions.PROPOSAL), ""));
    assertThat(answer()).isEqualTo(new Answer.Kept(RiddenSuggestions.MOTO));
    assertThat(isShown("ridden")).as("the question is closed").isFalse();
  }

  private rutbook.edit.Edit note(Suggestion best, MotoId moto, int severity) {
    Feel feel =
        RiddenSuggestions.question(editor.present()).asked().get(0).before().withSeverity(severity);
    return new rutbook.edit.MotoEdit.NoteFeel(
        RiddenSuggestions.lastDay(editor.present()).id(), moto, feel);
  }

  @Test
  void keepingItClosesTheQuestionInOneTouchAndUndoAsksAgain() {
    openAt(RiddenSuggestions.riddenAndNotAsked(), session());
    touch("ridden-KEEP");
    assertThat(answer()).isEqualTo(new Answer.Kept(RiddenSuggestions.MOTO));
    assertThat(isShown("ridden")).isFalse();
    interact(editor::undo);
    settle();
    assertThat(isShown("ridden")).isTrue();
  }

  @Test
  void onAnotherDayItIsPutBackBetweenSessionsAndNoMotoIsOffered() {
    openAt(RiddenSuggestions.riddenAndNotAsked(), new Place.Next(), 2);
    assertThat(scene().lookup("#ridden-ONE_MORE")).isNull();
    touch("ridden-GO_BACK");
    Suggestion best = RiddenSuggestions.best();
    Entry.Adjusted adjusted =
        Timeline.of(editor.present(), RiddenSuggestions.BIKE)
            .latest(Entry.Adjusted.class)
            .orElseThrow();
    assertThat(adjusted.day()).isEqualTo(RiddenSuggestions.day().plusDays(2));
    assertThat(adjusted.changes()).containsExactly(Change.of(best.setting().id(), best.from()));
    assertThat(answer()).isEqualTo(new Answer.PutBack(RiddenSuggestions.MOTO));
  }

  @Test
  void theKeyboardAloneAnswersAndTheFocusStays() {
    Notebook ridden = RiddenSuggestions.riddenAndNotAsked();
    AfterRide.Asked asked = RiddenSuggestions.question(ridden).asked().get(0);
    openAt(ridden, session());
    interact(() -> node("ridden-0-0").requestFocus());
    press(node("ridden-0-0"), KeyCode.SPACE);
    settle();
    assertThat(last().report().feel(asked.before().key()).map(Feel::severity)).contains(0);
    assertThat(scene().getFocusOwner().getId()).isEqualTo("ridden-0-0");
  }

  @Test
  void withoutASuggestionTakenNothingIsAsked() {
    openAt(RiddenSuggestions.SEASON, session());
    assertThat(isShown("ridden")).isFalse();
  }
}
