package rutbook.ui;

import java.util.List;
import java.util.Optional;
import rutbook.edit.Edit;
import rutbook.edit.EntryEdit;
import rutbook.edit.RebuildEdit;
import rutbook.edit.SessionEdit;
import rutbook.notebook.Answer;
import rutbook.notebook.Bike;
import rutbook.notebook.Change;
import rutbook.notebook.Entry;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoId;
import rutbook.notebook.MotoKind;
import rutbook.notebook.NotebookException;
import rutbook.notebook.ProposalId;
import rutbook.notebook.Report;
import rutbook.reasoning.AfterRide;
import rutbook.reasoning.RiddenProposal;

/** What a step after a ridden suggestion becomes in the notebook: a moto, a change, an answer. */
final class RiddenStep {
  private final Desk desk;
  private final RiddenProposal ridden;

  RiddenStep(Desk desk, RiddenProposal ridden) {
    this.desk = desk;
    this.ridden = ridden;
  }

  /** Whether the day of the session is over, or its end noted: no moto of it can follow. */
  boolean isLater() {
    return !ridden.session().day().equals(desk.today()) || ridden.session().check().isPresent();
  }

  boolean isPossible(AfterRide.Step step) {
    return step != AfterRide.Step.ONE_MORE || !isLater();
  }

  /** Goes on to the session where a moto follows; the fault where the notebook refuses. */
  Optional<NotebookException> take(AfterRide.Step step) {
    Optional<NotebookException> refused = desk.make(edit(step));
    boolean rides = step != AfterRide.Step.KEEP && step != AfterRide.Step.LEAVE_BACK;
    if (refused.isEmpty() && rides && !isLater()) {
      desk.go(new Place.Session(ridden.session().id()));
    }
    return refused;
  }

  private Edit edit(AfterRide.Step step) {
    Change back = Change.of(ridden.setting().id(), ridden.proposal().from());
    return switch (step) {
      case ONE_MORE -> moto(List.of());
      case KEEP -> kept();
      case LEAVE_BACK -> putBack();
      case GO_BACK -> isLater() ? together(changed(back), putBack()) : moto(List.of(back));
      case SET_AGAIN -> together(isLater() ? changed(again()) : moto(List.of(again())), kept());
    };
  }

  private Change again() {
    Optional<ProposalId> follows = Optional.of(ridden.proposal().id());
    return new Change(ridden.setting().id(), ridden.proposal().to(), follows, "");
  }

  private static Edit together(Edit one, Edit other) {
    return new Edit.Together(List.of(one, other));
  }

  private Edit moto(List<Change> changes) {
    MotoId id = new MotoId(desk.ids().next());
    return new SessionEdit.AddMoto(
        ridden.session().id(),
        new Moto(id, MotoKind.MOTO, changes, Report.EMPTY, Optional.empty(), ""));
  }

  private Edit changed(Change change) {
    Bike bike = desk.notebook().shelf().bike(ridden.session().bike()).orElseThrow();
    return new EntryEdit.Add(new Entry.Adjusted(desk.headToday(bike), List.of(change)));
  }

  private Edit kept() {
    return answered(new Answer.Kept(first()));
  }

  private Edit putBack() {
    return answered(new Answer.PutBack(first()));
  }

  private MotoId first() {
    return ridden.session().motos().get(ridden.at()).id();
  }

  private Edit answered(Answer answer) {
    return new RebuildEdit.AnswerProposal(ridden.advice().id(), ridden.proposal().id(), answer);
  }
}
