package rutbook.ui.coach;

import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import rutbook.notebook.Entry;
import rutbook.notebook.Proposal;
import rutbook.notebook.Setting;
import rutbook.notebook.Source;
import rutbook.notebook.Timeline;
import rutbook.ui.Desk;
import rutbook.ui.controls.Keys;

/** Advice of a coach that is kept in the notebook: what was said, and what became of it. */
final class AdviceView extends VBox {
  private final Desk desk;
  private final Timeline timeline;
  private final Entry.Advice advice;

  AdviceView(Desk desk, Timeline timeline, Entry.Advice advice) {
    super(8);
    this.desk = desk;
    this.timeline = timeline;
    this.advice = advice;
    setId("advice-" + advice.id());
    String name = advice.source() instanceof Source.Coach coach ? coach.name() : "";
    getChildren().add(Keys.prose(desk.text("coach.said", name, advice.day()), "strong"));
    if (!advice.general().isBlank()) {
      getChildren().add(Keys.prose(desk.phrases().safe(advice.general())));
    }
    advice.proposals().forEach(each -> getChildren().add(proposal(each)));
  }

  private Node proposal(Proposal proposal) {
    String said =
        timeline.bike().sheets().stream()
            .flatMap(sheet -> sheet.setting(proposal.setting()).stream())
            .reduce((earlier, later) -> later)
            .map(setting -> said(setting, proposal))
            .orElse(proposal.setting().text());
    Label what = Keys.prose(said);
    what.setMinWidth(0);
    what.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(what, Priority.ALWAYS);
    VBox text = new VBox(2, what);
    text.setMinWidth(0);
    HBox.setHgrow(text, Priority.ALWAYS);
    if (!proposal.reason().isBlank()) {
      text.getChildren().add(Keys.prose(desk.phrases().safe(proposal.reason()), "soft"));
    }
    ProposalAnswer answer = new ProposalAnswer(desk, timeline, advice, proposal);
    return new VBox(6, text, answer);
  }

  private String said(Setting setting, Proposal proposal) {
    return desk.text(
        "coach.proposal",
        setting.name(),
        desk.settingWords().change(setting, proposal.from(), proposal.to()));
  }
}
