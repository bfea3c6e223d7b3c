package rutbook.ui.rebuild;

import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.util.Duration;
import rutbook.ui.Desk;
import rutbook.ui.controls.Keys;

/** Counts down while oil drains or bubbles rise; it ends nothing by itself. */
final class BenchTimer extends HBox {
  private final Desk desk;
  private final int minutes;
  private final Label left = Keys.label("", "bench-clock");
  private final Button start;
  private final Timeline ticking;
  private int seconds;

  BenchTimer(Desk desk, int minutes) {
    super(14);
    this.desk = desk;
    this.minutes = minutes;
    setId("bench-timer");
    setAlignment(Pos.CENTER_LEFT);
    start = Keys.key("bench-timer-start", "", this::toggle);
    ticking = new Timeline(new KeyFrame(Duration.seconds(1), event -> tick()));
    ticking.setCycleCount(Animation.INDEFINITE);
    reset();
    getChildren().addAll(left, start);
    sceneProperty()
        .addListener(
            (scene, before, now) -> {
              if (now == null) {
                ticking.stop();
              }
            });
  }

  private void reset() {
    seconds = minutes * 60;
    start.setText(desk.text("bench.timer.start", minutes));
    show();
  }

  private void toggle() {
    if (ticking.getStatus() == Animation.Status.RUNNING) {
      ticking.stop();
      reset();
    } else {
      ticking.play();
      start.setText(desk.text("bench.timer.stop"));
    }
  }

  private void tick() {
    seconds = Math.max(0, seconds - 1);
    if (seconds == 0) {
      ticking.stop();
    }
    show();
  }

  private void show() {
    left.setText(
        seconds == 0
            ? desk.text("bench.timer.over")
            : String.format(java.util.Locale.ROOT, "%d:%02d", seconds / 60, seconds % 60));
  }
}
