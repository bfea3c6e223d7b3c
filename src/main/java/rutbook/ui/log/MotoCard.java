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
  private static final int MOST_LINES = 3;

  private final Desk desk;

  /**
   * @param entering whether its feel is being entered below, where it need not stand twice
   */
  MotoCard(Desk desk, SessionModel.Ride ride, boolean chosen, boolean entering, Runnable choose) {
    super(5);
    this.desk = desk;
    Moto moto = ride.moto();
    setId("moto-" + ride.number());
    getStyleClass().addAll("card", "moto-card");
    if (chosen) {
      getStyleClass().add("chosen");
    }
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.BUTTON);
    setMinWidth(236);
    setPrefWidth(262);
    setMaxWidth(262);
    getChildren().add(head(ride));
    if (entering) {
      getChildren().add(Keys.label(desk.text("moto.noting", moto.report().feel().size()), "soft"));
    } else {
      feel(moto.report().feel());
    }
    Region gap = new Region();
    VBox.setVgrow(gap, Priority.ALWAYS);
    Region rule = new Region();
    rule.getStyleClass().add("rule");
    getChildren().addAll(gap, rule, laps(ride));
    setAccessibleText(
        desk.text(
            "moto.accessible",
            desk.words().label(moto.kind()),
            ride.number(),
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

  private HBox head(SessionModel.Ride ride) {
    Label name =
        Keys.label(
            desk.text("moto.title", desk.words().label(ride.moto().kind()), ride.number()),
            "card-title");
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    Label trust = Keys.label(trustText(ride.moto().report().trust()), "soft", "condensed");
    HBox head = new HBox(6, name, gap, trust);
    head.setAlignment(Pos.BASELINE_LEFT);
    return head;
  }

  private String trustText(OptionalInt trust) {
    return trust.isPresent()
        ? desk.text("moto.trust", trust.getAsInt())
        : desk.text("moto.trust.none");
  }

  private void feel(List<Feel> all) {
    List<Feel> worst =
        all.stream().sorted((a, b) -> b.severity() - a.severity()).limit(MOST_LINES).toList();
    for (Feel feel : worst) {
      String text =
          desk.text(
              "feel.symptom",
              desk.words().name(feel.end()),
              desk.words().name(feel.symptom()),
              desk.words().name(feel.section()));
      Label label = Keys.label(text, "condensed");
      label.setMinWidth(0);
      Region gap = new Region();
      HBox.setHgrow(gap, Priority.ALWAYS);
      HBox line = new HBox(6, label, gap, new Severity(feel.severity(), desk.text("moto.gone")));
      line.setAlignment(Pos.CENTER_LEFT);
      getChildren().add(line);
    }
    if (all.size() > worst.size()) {
      getChildren()
          .add(Keys.label(desk.text("moto.more", all.size() - worst.size()), "soft", "condensed"));
    }
    if (all.isEmpty()) {
      getChildren().add(Keys.label(desk.text("moto.nothing"), "soft"));
    }
  }

  private HBox laps(SessionModel.Ride ride) {
    HBox row =
        new HBox(10, Keys.label(desk.text("moto.laps", ride.lapsThatCount()), "soft", "condensed"));
    ride.medianLap()
        .ifPresent(
            median ->
                row.getChildren()
                    .add(Keys.label(desk.text("moto.median", desk.words().lap(median)), "number")));
    if (ride.moto().report().doubtful()) {
      row.getChildren().add(Keys.label(desk.text("moto.doubtful"), "due"));
    }
    return row;
  }
}
