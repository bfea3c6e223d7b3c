package rutbook.ui.coach;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import rutbook.drawing.Ruler;
import rutbook.notebook.Carrier;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.WhyUnknown;
import rutbook.share.CoachPart;
import rutbook.share.SetupFile;
import rutbook.share.Suggested;
import rutbook.ui.Desk;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.RulerControl;
import rutbook.units.Amount;

/** One setting of a guest's bike: the coach drags, steps or types where it should go, and why. */
final class GuestSetting extends VBox {
  private final Desk desk;
  private final Setting setting;
  private final Consumer<UnaryOperator<CoachPart>> change;
  private final Label said = Keys.prose("");
  private final RulerControl ruler;
  private final TextField reason = new TextField();
  private final Button remove;
  private final HBox why;
  private SetupFile file;

  GuestSetting(Desk desk, Setting setting, Consumer<UnaryOperator<CoachPart>> change) {
    super(4);
    this.desk = desk;
    this.setting = setting;
    this.change = change;
    setId("guest-setting-" + setting.id());
    getStyleClass().add("card");
    ruler =
        new RulerControl(
            "guest-" + setting.id(), desk.words(), desk.settingWords(), this::propose, () -> {});
    reason.setId("guest-reason-" + setting.id());
    reason.setPromptText(desk.text("coach.why"));
    reason.setAccessibleText(desk.text("coach.why.of", setting.name()));
    reason.setOnAction(event -> explain());
    reason
        .focusedProperty()
        .addListener(
            (focus, before, now) -> {
              if (!now) {
                explain();
              }
            });
    HBox.setHgrow(reason, Priority.ALWAYS);
    remove = Keys.key("guest-remove-" + setting.id(), desk.text("coach.remove"), this::remove);
    why = new HBox(8, reason, remove);
    why.setAlignment(Pos.CENTER_LEFT);
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    HBox head = new HBox(10, Keys.label(desk.phrases().safe(setting.name()), "strong"), gap, said);
    said.setId("guest-said-" + setting.id());
    head.setAlignment(Pos.CENTER_LEFT);
    getChildren().addAll(head, ruler);
  }

  private Optional<Suggested> suggested() {
    return file.coach().flatMap(coach -> coach.proposal(setting.id()));
  }

  private Reading handedOver() {
    return file.asked()
        .setup()
        .reading(setting.id())
        .orElseGet(() -> Reading.unknown(setting.carrier(), WhyUnknown.NOT_NOTED));
  }

  private void propose(Amount amount) {
    Reading to = setting.carrier() == Carrier.PAIR ? Reading.bothLegs(amount) : Reading.of(amount);
    if (to.sameAs(handedOver())) {
      remove();
      return;
    }
    change.accept(coach -> coach.with(new Suggested(setting.id(), to, reason.getText().strip())));
  }

  private void explain() {
    if (file != null && suggested().isPresent()) {
      Reading to = suggested().get().to();
      change.accept(coach -> coach.with(new Suggested(setting.id(), to, reason.getText().strip())));
    }
  }

  private void remove() {
    change.accept(coach -> coach.without(setting.id()));
  }

  /** The dot is where the coach would set it, the small hollow one what was handed over. */
  void show(SetupFile now) {
    file = now;
    Reading before = handedOver();
    Optional<Suggested> wish = suggested();
    Reading shown = wish.map(Suggested::to).orElse(before);
    Ruler drawn = Ruler.of(file.sheet(), setting, shown).withPrevious(before);
    ruler.show(
        file.sheet(),
        setting,
        drawn,
        List.of(desk.text("ruler.previous", desk.settingWords().reading(setting, before))));
    said.setText(
        wish.isPresent()
            ? desk.settingWords().change(setting, before, shown)
            : desk.settingWords().reading(setting, before));
    said.getStyleClass().remove("due");
    getStyleClass().remove("chosen");
    if (wish.isPresent()) {
      said.getStyleClass().add("due");
      getStyleClass().add("chosen");
      if (!reason.isFocused()) {
        reason.setText(wish.get().reason());
      }
      if (!getChildren().contains(why)) {
        getChildren().add(why);
      }
    } else {
      reason.clear();
      getChildren().remove(why);
    }
  }
}
