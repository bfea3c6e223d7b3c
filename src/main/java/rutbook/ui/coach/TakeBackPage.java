package rutbook.ui.coach;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import rutbook.drawing.Ruler;
import rutbook.edit.AdviceEdit;
import rutbook.notebook.Bike;
import rutbook.notebook.Entry;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Proposal;
import rutbook.notebook.ProposalId;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Sheet;
import rutbook.share.Returned;
import rutbook.share.ShareException;
import rutbook.share.Standing;
import rutbook.share.TakeBack;
import rutbook.ui.Desk;
import rutbook.ui.OutsideFiles;
import rutbook.ui.Page;
import rutbook.ui.Place;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.RulerView;
import rutbook.ui.controls.Scrolling;
import rutbook.words.ShareWords;

/**
 * What the coach says, setting by setting on rulers: as it was handed over, as it is now, and where
 * the coach would set it. Nothing is kept before the rider says so.
 */
public final class TakeBackPage extends Page {
  private final OutsideFiles.Opened opened;
  private final Label title = Keys.prose("", "page-title");
  private final Button keep;
  private final Label error = Keys.prose("", "error");
  private final VBox body = new VBox(12);
  private Optional<TakeBack> back = Optional.empty();
  private Optional<Entry.Advice> advice = Optional.empty();

  public TakeBackPage(Desk desk, OutsideFiles.Opened opened) {
    super(desk);
    this.opened = opened;
    setId("take-back-page");
    setSpacing(12);
    keep = Keys.mainKey("take-back-keep", desk.text("coach.keep"), this::keep);
    Button leave =
        Keys.smallKey(
            "take-back-leave", "← " + desk.text("coach.title"), () -> desk.go(new Place.Coach()));
    title.setMinWidth(0);
    title.setId("take-back-title");
    title.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(title, Priority.ALWAYS);
    HBox head = new HBox(10, leave, title, keep);
    head.setAlignment(Pos.CENTER_LEFT);
    error.setId("take-back-error");
    error.managedProperty().bind(error.textProperty().isNotEmpty());
    getChildren().addAll(head, error, Scrolling.page(body));
    hold();
  }

  /** Held against the notebook once, when it is opened: what follows is answered to that. */
  private void hold() {
    try {
      TakeBack found =
          TakeBack.of(desk().notebook(), opened.file(), opened.ridersChecksum(), desk().today());
      Bike bike = desk().notebook().shelf().bike(found.own().bike()).orElseThrow();
      back = Optional.of(found);
      advice =
          Optional.of(
              found.advice(desk().headToday(bike), () -> new ProposalId(desk().ids().next())));
      title.setText(words().from(found.coach()));
    } catch (ShareException cannot) {
      title.setText(desk().text("coach.take-back"));
      error.setText(words().sentence(cannot));
    }
  }

  private ShareWords words() {
    return new ShareWords(desk().phrases());
  }

  private void keep() {
    Optional<NotebookException> refused =
        desk().make(new AdviceEdit.TakeBack(advice.orElseThrow()));
    error.setText(refused.map(desk().settingWords()::refusal).orElse(""));
  }

  @Override
  protected void show(Notebook notebook) {
    body.getChildren().clear();
    boolean kept = isKept();
    keep.setVisible(back.isPresent() && !kept);
    keep.setManaged(keep.isVisible());
    if (back.isEmpty()) {
      return;
    }
    TakeBack found = back.get();
    for (String remark : words().remarks(found, opened.hasChecksum())) {
      body.getChildren().add(Keys.prose(remark, "caution"));
    }
    if (!kept) {
      body.getChildren().add(Keys.prose(desk().text("coach.keep.first"), "soft"));
    }
    if (!found.coach().general().isBlank()) {
      VBox general =
          new VBox(
              4,
              Keys.label(desk().text("coach.general"), "card-title"),
              Keys.prose(desk().phrases().safe(found.coach().general())));
      general.getStyleClass().add("wash");
      body.getChildren().add(general);
    }
    found.proposals().forEach(each -> body.getChildren().add(card(found, each)));
  }

  private boolean isKept() {
    return advice.flatMap(it -> desk().notebook().entry(it.id())).isPresent();
  }

  private Node card(TakeBack found, Returned returned) {
    VBox card = new VBox(8);
    card.setId("returned-" + returned.id());
    card.getStyleClass().add("card");
    String name = returned.setting().map(Setting::name).orElse(returned.id().text());
    card.getChildren().add(Keys.label(desk().phrases().safe(name), "card-title"));
    Label said = Keys.prose(words().returned(returned));
    said.setId("returned-said-" + returned.id());
    if (returned.standing() == Standing.HELD || returned.standing() == Standing.CHANGED) {
      said.getStyleClass().add("due");
    }
    ruler(found, returned).ifPresent(card.getChildren()::add);
    card.getChildren().add(said);
    if (!returned.suggested().reason().isBlank()) {
      String reason = desk().phrases().safe(returned.suggested().reason());
      card.getChildren().add(Keys.prose(desk().text("coach.reason", reason), "soft"));
    }
    answer(found, returned).ifPresent(card.getChildren()::add);
    return card;
  }

  /** Now is the dot, what was handed over the small hollow one, the coach's wish the arrow. */
  private Optional<Node> ruler(TakeBack found, Returned returned) {
    Sheet sheet = desk().timeline(found.own().bike()).sheetOn(desk().today());
    Optional<Setting> setting = sheet.setting(returned.id());
    Optional<Reading> now = returned.now().or(returned::handedOver);
    if (setting.isEmpty() || now.isEmpty() || returned.standing() == Standing.NOT_YOURS) {
      return Optional.empty();
    }
    Ruler ruler =
        Ruler.of(sheet, setting.get(), now.get())
            .withProposal(returned.suggested().to())
            .in(desk().notebook().display());
    ruler = returned.handedOver().map(ruler::withPrevious).orElse(ruler);
    RulerView view = new RulerView(desk().settingWords().numerals(), 1.25);
    view.show(ruler);
    view.setMinHeight(USE_PREF_SIZE);
    view.setAccessibleText(words().returned(returned));
    return Optional.of(view);
  }

  private Optional<Node> answer(TakeBack found, Returned returned) {
    Optional<Entry.Advice> kept =
        advice
            .flatMap(it -> desk().notebook().entry(it.id()))
            .filter(Entry.Advice.class::isInstance)
            .map(Entry.Advice.class::cast);
    Optional<Proposal> proposal =
        kept.flatMap(
            it ->
                it.proposals().stream()
                    .filter(each -> each.setting().equals(returned.id()))
                    .findFirst());
    return proposal.map(
        each ->
            new ProposalAnswer(
                desk(), desk().timeline(found.own().bike()), kept.orElseThrow(), each));
  }
}
