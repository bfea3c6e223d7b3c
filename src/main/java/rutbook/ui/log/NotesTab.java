package rutbook.ui.log;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import rutbook.edit.EntryEdit;
import rutbook.edit.MotoEdit;
import rutbook.edit.SessionEdit;
import rutbook.notebook.Conditions;
import rutbook.notebook.Ground;
import rutbook.notebook.Moisture;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Ready;
import rutbook.ui.Desk;
import rutbook.ui.controls.Keys;
import rutbook.units.Amount;
import rutbook.units.AmountException;
import rutbook.units.AmountText;
import rutbook.units.Dimension;

/** Conditions of the day, what was checked before riding, and the notes. */
final class NotesTab extends VBox {
  private final Desk desk;
  private final TextArea note = new TextArea();
  private final TextArea motoNote = new TextArea();
  private final Label motoTitle = Keys.label("", "group-title");
  private final CheckBox doubtful = new CheckBox();
  private final FlowPane ground = new FlowPane(6, 6);
  private final FlowPane moisture = new FlowPane(6, 6);
  private final FlowPane roughness = new FlowPane(6, 6);
  private final FlowPane ready = new FlowPane(6, 6);
  private final TextField air = new TextField();
  private final Label error = Keys.prose("", "error");
  private SessionModel model;
  private Optional<SessionModel.Ride> ride = Optional.empty();
  private boolean telling;

  NotesTab(Desk desk) {
    super(8);
    this.desk = desk;
    setId("notes-tab");
    air.setId("notes-air");
    air.setMaxWidth(140);
    air.setOnAction(event -> takeAir());
    air.focusedProperty()
        .addListener(
            (focused, before, now) -> {
              if (!now) {
                takeAir();
              }
            });
    air.setAccessibleText(desk.text("notes.air"));
    note.setId("notes-note");
    note.setAccessibleText(desk.text("notes.note"));
    motoNote.setId("notes-moto-note");
    motoNote.accessibleTextProperty().bind(motoTitle.textProperty());
    for (TextArea area : List.of(note, motoNote)) {
      area.setPrefRowCount(3);
      area.setWrapText(true);
      area.setMinHeight(70);
    }
    note.textProperty().addListener((text, before, now) -> noteTyped(now));
    motoNote.textProperty().addListener((text, before, now) -> motoNoteTyped(now));
    doubtful.setId("notes-doubtful");
    doubtful.setText(desk.text("notes.doubtful"));
    doubtful.setOnAction(event -> mark());
    getChildren()
        .addAll(
            titled("notes.ground", ground),
            titled("notes.moisture", moisture),
            titled("notes.roughness", roughness),
            titled("notes.air", air),
            error,
            titled("notes.ready", ready),
            titled("notes.note", note),
            new VBox(4, motoTitle, motoNote, doubtful));
    error.setManaged(false);
  }

  private Node titled(String key, Node node) {
    return new VBox(4, Keys.label(desk.text(key), "group-title"), node);
  }

  void show(SessionModel newModel, Optional<SessionModel.Ride> newRide) {
    model = newModel;
    ride = newRide;
    telling = true;
    Conditions now = model.session().conditions();
    choices(ground, Ground.values(), now.ground(), this::ground);
    choices(moisture, Moisture.values(), now.moisture(), this::moisture);
    showRoughness(now);
    showReady(now);
    if (!air.isFocused() && !error.isManaged()) {
      air.setText(now.air().map(desk.settingWords()::amount).orElse(""));
    }
    set(note, model.session().head().note());
    motoTitle.setText(
        ride.map(
                each ->
                    desk.text("notes.moto", desk.words().name(each.moto().kind()), each.number()))
            .orElse(""));
    set(motoNote, ride.map(each -> each.moto().note()).orElse(""));
    motoNote.getParent().setVisible(ride.isPresent());
    doubtful.setSelected(ride.map(each -> each.moto().report().doubtful()).orElse(false));
    telling = false;
  }

  private static void set(TextArea area, String text) {
    if (!area.getText().equals(text)) {
      area.setText(text);
    }
  }

  private <E extends Enum<E>> void choices(
      FlowPane pane, E[] values, Optional<E> now, Function<Optional<E>, Conditions> next) {
    List<Node> keys = new ArrayList<>();
    for (E value : values) {
      boolean on = now.equals(Optional.of(value));
      ToggleButton key =
          Keys.choice(
              value.getDeclaringClass().getSimpleName() + "-" + value,
              desk.words().label(value),
              () -> describe(next.apply(on ? Optional.empty() : Optional.of(value))));
      key.setSelected(on);
      keys.add(key);
    }
    pane.getChildren().setAll(keys);
  }

  private Conditions present() {
    return model.session().conditions();
  }

  private Conditions ground(Optional<Ground> next) {
    Conditions now = present();
    return new Conditions(next, now.moisture(), now.roughness(), now.air(), now.ready());
  }

  private Conditions moisture(Optional<Moisture> next) {
    Conditions now = present();
    return new Conditions(now.ground(), next, now.roughness(), now.air(), now.ready());
  }

  private void showRoughness(Conditions now) {
    List<Node> keys = new ArrayList<>();
    for (int i = 0; i <= 5; i++) {
      OptionalInt value = OptionalInt.of(i);
      boolean on = now.roughness().equals(value);
      ToggleButton key =
          Keys.choice(
              "roughness-" + i,
              Integer.toString(i),
              () ->
                  describe(
                      new Conditions(
                          now.ground(),
                          now.moisture(),
                          on ? OptionalInt.empty() : value,
                          now.air(),
                          now.ready())));
      key.getStyleClass().add("digit");
      key.setAccessibleText(desk.text("session.roughness", i));
      key.setSelected(on);
      keys.add(key);
    }
    roughness.getChildren().setAll(keys);
  }

  private void showReady(Conditions now) {
    List<Node> keys = new ArrayList<>();
    for (Ready each : Ready.values()) {
      boolean on = now.ready().contains(each);
      ToggleButton key =
          Keys.choice(
              "ready-" + each,
              desk.words().label(each),
              () -> {
                Set<Ready> next = EnumSet.noneOf(Ready.class);
                next.addAll(now.ready());
                if (!next.remove(each)) {
                  next.add(each);
                }
                describe(
                    new Conditions(now.ground(), now.moisture(), now.roughness(), now.air(), next));
              });
      key.setSelected(on);
      keys.add(key);
    }
    ready.getChildren().setAll(keys);
  }

  private void describe(Conditions next) {
    desk.make(new SessionEdit.Describe(model.session().id(), next));
    show(model, ride);
  }

  private void takeAir() {
    if (model == null) {
      return;
    }
    try {
      String text = air.getText().strip();
      Optional<Amount> next =
          text.isEmpty()
              ? Optional.empty()
              : Optional.of(
                  AmountText.parse(
                      text,
                      Dimension.TEMPERATURE,
                      desk.notebook().display(),
                      desk.words().locale()));
      refuse("");
      Conditions now = present();
      if (!next.equals(now.air())) {
        describe(new Conditions(now.ground(), now.moisture(), now.roughness(), next, now.ready()));
      }
    } catch (AmountException fault) {
      refuse(desk.words().fault(fault));
    }
  }

  private void refuse(String sentence) {
    error.setText(sentence);
    error.setManaged(!sentence.isEmpty());
  }

  private void noteTyped(String text) {
    if (!telling && model != null) {
      tooLong(desk.make(new EntryEdit.Note(model.session().id(), text)));
    }
  }

  private void motoNoteTyped(String text) {
    if (!telling && ride.isPresent()) {
      tooLong(desk.make(new MotoEdit.Note(model.session().id(), ride.get().moto().id(), text)));
    }
  }

  private void tooLong(Optional<NotebookException> refused) {
    refuse(refused.map(fault -> desk.text("refused.other", fault.getMessage())).orElse(""));
  }

  private void mark() {
    if (!telling && ride.isPresent()) {
      desk.make(
          new MotoEdit.Mark(model.session().id(), ride.get().moto().id(), doubtful.isSelected()));
    }
  }
}
