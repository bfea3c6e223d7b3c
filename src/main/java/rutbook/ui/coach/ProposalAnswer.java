package rutbook.ui.coach;

import java.util.List;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import rutbook.edit.AdviceEdit;
import rutbook.edit.Edit;
import rutbook.edit.NextMoto;
import rutbook.edit.RebuildEdit;
import rutbook.notebook.Answer;
import rutbook.notebook.Entry;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Proposal;
import rutbook.notebook.Timeline;
import rutbook.share.Followed;
import rutbook.ui.Desk;
import rutbook.ui.Place;
import rutbook.ui.controls.Keys;

/** What became of a coach's proposal; while it is open, the keys to take or decline it. */
final class ProposalAnswer extends VBox {
  private static final List<String> USUAL = List.of("tried", "feel", "part", "time");

  private final Desk desk;
  private final Timeline timeline;
  private final Entry.Advice advice;
  private final Proposal proposal;
  private final VBox below = new VBox(6);
  private final Label error = Keys.prose("", "error");

  ProposalAnswer(Desk desk, Timeline timeline, Entry.Advice advice, Proposal proposal) {
    super(6);
    this.desk = desk;
    this.timeline = timeline;
    this.advice = advice;
    this.proposal = proposal;
    error.managedProperty().bind(error.textProperty().isNotEmpty());
    error.setId("answer-error-" + proposal.setting());
    Optional<Followed> followed = Followed.of(timeline, proposal.id());
    if (followed.isPresent()) {
      tell("coach.followed", followed.get().entry().day());
    } else if (proposal.answer() instanceof Answer.Declined declined) {
      declined(declined.word());
    } else if (isOnToday()) {
      if (proposal.answer() instanceof Answer.Held held) {
        tell("coach.held", held.limit());
      }
      ask();
    } else {
      tell("coach.gone");
    }
  }

  private boolean isOnToday() {
    return timeline.sheetOn(desk.today()).setting(proposal.setting()).isPresent();
  }

  private void tell(String key, Object... facts) {
    Label told = Keys.prose(desk.text(key, facts), "soft");
    told.setId("answer-" + proposal.setting());
    getChildren().add(told);
  }

  private void declined(String word) {
    if (word.isBlank()) {
      tell("coach.declined");
    } else {
      tell("coach.declined.with", word);
    }
  }

  private void ask() {
    boolean today = next().isPresent();
    FlowPane keys =
        new FlowPane(
            8,
            8,
            Keys.key(
                "take-" + proposal.setting(),
                desk.text(today ? "coach.take.moto" : "coach.take.between"),
                this::take),
            Keys.key("decline-" + proposal.setting(), desk.text("coach.decline"), this::decline));
    getChildren().addAll(keys, error, below);
  }

  private Optional<NextMoto> next() {
    return NextMoto.of(desk.notebook(), advice.bike(), desk.today(), desk.ids());
  }

  private void take() {
    Optional<NextMoto> next = next();
    Edit follow =
        next.<Edit>map(
                it -> new AdviceEdit.Follow(advice.id(), proposal.id(), it.session(), it.moto()))
            .orElseGet(
                () ->
                    new AdviceEdit.FollowBetween(
                        advice.id(), proposal.id(), desk.headToday(timeline.bike())));
    refused(desk.make(follow));
    next.ifPresent(it -> desk.go(new Place.Session(it.session())));
  }

  private void refused(Optional<NotebookException> refused) {
    refused.ifPresent(fault -> error.setText(desk.settingWords().refusal(fault)));
  }

  private void decline() {
    FlowPane usual = new FlowPane(8, 8);
    for (String each : USUAL) {
      String word = desk.text("next.why." + each);
      usual
          .getChildren()
          .add(Keys.key("word-" + each + "-" + proposal.setting(), word, () -> decline(word)));
    }
    TextField own = new TextField();
    own.setId("word-own-" + proposal.setting());
    own.getStyleClass().add("large-target");
    own.setPromptText(desk.text("skip.own"));
    own.setAccessibleText(desk.text("skip.own"));
    own.setOnAction(event -> decline(own.getText()));
    below.getChildren().setAll(usual, own);
    usual.getChildren().get(0).requestFocus();
  }

  private void decline(String word) {
    if (!word.isBlank()) {
      refused(
          desk.make(
              new RebuildEdit.AnswerProposal(
                  advice.id(), proposal.id(), new Answer.Declined(word.strip()))));
    }
  }
}
