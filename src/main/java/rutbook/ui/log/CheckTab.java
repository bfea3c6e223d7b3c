package rutbook.ui.log;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import rutbook.edit.SessionEdit;
import rutbook.notebook.Carrier;
import rutbook.notebook.Datum;
import rutbook.notebook.EndOfDayCheck;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Setup;
import rutbook.notebook.Side;
import rutbook.notebook.Value;
import rutbook.notebook.Work;
import rutbook.ui.Desk;
import rutbook.ui.controls.CountAlong;
import rutbook.ui.controls.Keys;
import rutbook.units.Amount;

/** Whether what is on the bike is what the notebook says: touched "as noted", or counted. */
final class CheckTab extends VBox {
  /** Wider than this the keys would stand too far from what they are about. */
  private static final double WIDEST_EM = 66;

  private final Desk desk;
  private final Map<SettingId, Reading> seen = new LinkedHashMap<>();
  private final VBox rows = new VBox(6);
  private final HBox foot = new HBox(10);
  private SessionModel model;
  private Optional<Node> counting = Optional.empty();

  CheckTab(Desk desk) {
    super(10);
    this.desk = desk;
    setMaxWidth(WIDEST_EM * desk.em());
    setId("check-tab");
    foot.setAlignment(Pos.CENTER_LEFT);
    Label hint = Keys.prose(desk.text("check.hint"), "soft");
    HBox.setHgrow(hint, Priority.ALWAYS);
    hint.setMaxWidth(Double.MAX_VALUE);
    HBox head = new HBox(16, hint, foot);
    head.setAlignment(Pos.CENTER_LEFT);
    getChildren().addAll(head, rows);
  }

  /** What can be counted with the bike on its stand. */
  static List<Setting> checked(SessionModel model) {
    return model.sheet().settings().stream()
        .filter(setting -> setting.scale().isGrid() && setting.work() == Work.TRACKSIDE)
        .toList();
  }

  /** The setup that the notebook says was ridden last. */
  static Setup noted(SessionModel model) {
    return model.rides().isEmpty()
        ? model.session().start()
        : model.rides().get(model.rides().size() - 1).setup();
  }

  void show(SessionModel newModel) {
    if (model == null || !model.session().id().equals(newModel.session().id())) {
      seen.clear();
      counting = Optional.empty();
    }
    model = newModel;
    if (seen.isEmpty()) {
      model
          .session()
          .check()
          .ifPresent(
              check -> check.found().forEach(found -> seen.put(found.setting(), found.seen())));
    }
    redraw();
  }

  private void redraw() {
    rows.getChildren().setAll(counting.map(List::of).orElseGet(this::lines));
    int left = (int) checked(model).stream().filter(each -> !seen.containsKey(each.id())).count();
    Node write = Keys.mainKey("check-write", desk.text("check.write"), this::write);
    write.setDisable(seen.isEmpty() || isWritten());
    foot.getChildren().setAll(write);
    if (left > 0) {
      foot.getChildren().add(Keys.key("check-all", desk.text("check.all"), this::allAsNoted));
      foot.getChildren().add(Keys.label(desk.text("check.left", left), "soft"));
    } else if (isWritten()) {
      foot.getChildren().add(Keys.label(desk.text("session.checked"), "strong"));
    }
    foot.setVisible(counting.isEmpty());
  }

  private boolean isWritten() {
    return model.session().check().map(check -> check.equals(check())).orElse(false);
  }

  private List<Node> lines() {
    List<Node> lines = new ArrayList<>();
    for (Setting setting : checked(model)) {
      lines.add(line(setting));
    }
    return lines;
  }

  private Node line(Setting setting) {
    Reading noted = SessionModel.reading(noted(model), setting);
    Label name = Keys.prose(setting.name(), "strong", "check-name");
    Label says = Keys.prose(desk.settingWords().reading(setting, noted), "number", "check-says");
    Label state = state(setting, noted);
    HBox.setHgrow(state, Priority.ALWAYS);
    state.setMaxWidth(Double.MAX_VALUE);
    HBox line =
        new HBox(
            10,
            name,
            says,
            state,
            Keys.key(
                "noted-" + setting.id(), desk.text("check.as.noted"), () -> found(setting, noted)));
    for (Side side : sides(setting)) {
      String text =
          desk.text("check.count")
              + (setting.carrier() == Carrier.PAIR ? " " + desk.words().name(side) : "");
      line.getChildren()
          .add(Keys.key("count-" + setting.id() + "-" + side, text, () -> count(setting, side)));
    }
    line.setAlignment(Pos.CENTER_LEFT);
    return line;
  }

  private static List<Side> sides(Setting setting) {
    if (setting.scale().datum() == Datum.FROM_MARK) {
      return List.of();
    }
    return setting.carrier() == Carrier.PAIR ? List.of(Side.values()) : List.of(Side.LEFT);
  }

  private Label state(Setting setting, Reading noted) {
    Optional<Reading> found = Optional.ofNullable(seen.get(setting.id()));
    if (found.isEmpty()) {
      return Keys.label("");
    }
    if (found.get().sameAs(noted)) {
      return Keys.prose(desk.text("check.same"), "blue");
    }
    return Keys.prose(
        desk.text(
            "check.differs",
            desk.settingWords().reading(setting, found.get()),
            desk.settingWords().reading(setting, noted)),
        "overdue");
  }

  private void count(Setting setting, Side side) {
    String leg =
        setting.carrier() == Carrier.PAIR
            ? ", " + desk.text("count.leg", desk.words().name(side))
            : "";
    CountAlong control =
        new CountAlong(
            desk.words(),
            desk.settingWords(),
            CountAlong.Way.of(setting.scale().datum()),
            setting.name() + leg,
            setting.scale().step(),
            amount -> counted(setting, side, amount),
            this::stopCounting);
    counting = Optional.of(control);
    redraw();
    control.lookup("#count-plus").requestFocus();
  }

  private void stopCounting() {
    counting = Optional.empty();
    redraw();
  }

  private void counted(Setting setting, Side side, Amount amount) {
    Reading before = seen.getOrDefault(setting.id(), SessionModel.reading(noted(model), setting));
    Reading next =
        !(before instanceof Reading.Pair pair)
            ? Reading.of(amount)
            : side == Side.LEFT
                ? new Reading.Pair(Value.of(amount), pair.right())
                : new Reading.Pair(pair.left(), Value.of(amount));
    counting = Optional.empty();
    found(setting, next);
  }

  private void found(Setting setting, Reading reading) {
    seen.put(setting.id(), reading);
    redraw();
  }

  private void allAsNoted() {
    for (Setting setting : checked(model)) {
      seen.putIfAbsent(setting.id(), SessionModel.reading(noted(model), setting));
    }
    redraw();
  }

  private EndOfDayCheck check() {
    List<EndOfDayCheck.Found> found = new ArrayList<>();
    for (Setting setting : model.sheet().settings()) {
      Optional.ofNullable(seen.get(setting.id()))
          .ifPresent(reading -> found.add(new EndOfDayCheck.Found(setting.id(), reading)));
    }
    return new EndOfDayCheck(found);
  }

  private void write() {
    desk.make(new SessionEdit.CheckEndOfDay(model.session().id(), Optional.of(check())));
    redraw();
  }
}
