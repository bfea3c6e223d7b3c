package rutbook.ui.log;

import java.util.List;
import java.util.OptionalInt;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import rutbook.notebook.Feel;
import rutbook.notebook.Moto;
import rutbook.ui.Desk;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.Severity;

/** A moto in the chain: the worst of its feel, its trust and its laps. */
final class MotoCard extends VBox {
  /** All that a card shows; equal ones look alike. */
  record Face(SessionModel.Ride ride, boolean chosen, boolean entering, boolean low) {
    /** How many symptoms have room. */
    int lines() {
      return low ? 1 : 3;
    }
  }

  private final Desk desk;
  private final Face face;

  MotoCard(Desk desk, Face face, Runnable choose) {
    super(face.low() ? 2 : 5);
    this.desk = desk;
    this.face = face;
    Moto moto = face.ride().moto();
    setId("moto-" + face.ride().number());
    getStyleClass().addAll("card", "moto-card");
    if (face.chosen()) {
      getStyleClass().add("chosen");
    }
    if (face.low()) {
      getStyleClass().add("low");
    }
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.BUTTON);
    getChildren().add(head());
    if (face.entering()) {
      getChildren().add(Keys.label(desk.text("moto.noting", moto.report().feel().size()), "soft"));
    } else {
      feel(moto.report().feel());
    }
    Region gap = new Region();
    VBox.setVgrow(gap, Priority.ALWAYS);
    getChildren().add(gap);
    if (!face.low()) {
      Region rule = new Region();
      rule.getStyleClass().add("rule");
      getChildren().add(rule);
    }
    getChildren().add(foot());
    setAccessibleText(
        desk.text(
            "moto.accessible",
            desk.words().label(moto.kind()),
            face.ride().number(),
            trustText(moto.report().trust())));
    setOnMouseClicked(event -> choose.run());
    setOnKeyPressed(
        event -> {
          if (event.getCode() == KeyCode.ENTER || event.getCode() == KeyCode.SPACE) {
            choose.run();
            event.consume();
          }
        });
  }

  Face face() {
    return face;
  }

  private HBox head() {
    Moto moto = face.ride().moto();
    Label name =
        Keys.label(
            desk.text("moto.title", desk.words().label(moto.kind()), face.ride().number()),
            "card-title");
    Label trust = Keys.label(trustText(moto.report().trust()), "soft", "condensed");
    HBox head = new HBox(6, name, gap(), trust);
    head.setAlignment(Pos.BASELINE_LEFT);
    return head;
  }

  private static Region gap() {
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    return gap;
  }

  private String trustText(OptionalInt trust) {
    return trust.isPresent()
        ? desk.text("moto.trust", trust.getAsInt())
        : desk.text("moto.trust.none");
  }

  private void feel(List<Feel> all) {
    List<Feel> worst =
        all.stream().sorted((a, b) -> b.severity() - a.severity()).limit(face.lines()).toList();
    for (Feel feel : worst) {
      Label label = Keys.prose(Names.of(desk.words(), feel), "condensed");
      label.setMinWidth(0);
      HBox.setHgrow(label, Priority.ALWAYS);
      label.setMaxWidth(Double.MAX_VALUE);
      HBox line = new HBox(6, label, new Severity(feel.severity(), desk.text("moto.gone")));
      line.setAlignment(Pos.CENTER_LEFT);
      getChildren().add(line);
    }
    if (all.isEmpty()) {
      getChildren().add(Keys.label(desk.text("moto.nothing"), "soft"));
    }
  }

  private HBox foot() {
    SessionModel.Ride ride = face.ride();
    HBox row =
        new HBox(8, Keys.label(desk.text("moto.laps", ride.lapsThatCount()), "soft", "condensed"));
    ride.medianLap()
        .ifPresent(
            median ->
                row.getChildren()
                    .add(Keys.label(desk.text("moto.median", desk.words().lap(median)), "number")));
    if (ride.moto().report().doubtful()) {
      row.getChildren().add(Keys.label(desk.text("moto.doubtful"), "due"));
    }
    int more = ride.moto().report().feel().size() - face.lines();
    if (more > 0 && !face.entering()) {
      row.getChildren()
          .addAll(gap(), Keys.label(desk.text("moto.more", more), "soft", "condensed"));
    }
    return row;
  }
}
