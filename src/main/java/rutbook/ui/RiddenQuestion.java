package rutbook.ui;

import java.util.List;
import java.util.function.IntConsumer;
import java.util.stream.Stream;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.VBox;
import rutbook.reasoning.AfterRide;
import rutbook.ui.controls.BesideOrBelow;
import rutbook.ui.controls.KeyRow;
import rutbook.ui.controls.Keys;
import rutbook.words.RiddenWords;

/** Better, the same or worse: one complaint, answered with one touch. */
final class RiddenQuestion extends VBox {
  private static final int WORST = 5;
  private static final double KEY_HEIGHT = 44;

  /** With less room than this in px, the keys stand below the question. */
  private static final double LEAST_TEXT = 220;

  RiddenQuestion(RiddenWords words, AfterRide.Asked asked, int place, IntConsumer said) {
    Label text = Keys.prose(words.question(asked), asked.now().isEmpty() ? "strong" : "condensed");
    text.setMinWidth(0);
    text.setMinHeight(KEY_HEIGHT);
    KeyRow keys = new KeyRow("ridden-" + place, 4);
    for (int severity : answers(asked)) {
      ToggleButton key =
          Keys.choice(
              "ridden-" + place + "-" + severity,
              words.key(asked, severity),
              () -> said.accept(severity));
      key.setAccessibleText(words.keySaid(asked, severity));
      key.setSelected(asked.now().filter(now -> now.severity() == severity).isPresent());
      keys.add(key, Integer.toString(severity));
    }
    getChildren().add(new BesideOrBelow(text, keys, LEAST_TEXT));
  }

  /** Gone, half as bad, the same, one worse; what was said already stands in place of its like. */
  static List<Integer> answers(AfterRide.Asked asked) {
    int before = asked.before().severity();
    int now = asked.now().map(each -> each.severity()).orElse(-1);
    int better = now > 0 && now < before ? now : (before + 1) / 2;
    int worse = now > before ? now : before + 1;
    Stream<Integer> half = better > 0 && better < before ? Stream.of(better) : Stream.empty();
    Stream<Integer> more = worse <= WORST ? Stream.of(worse) : Stream.empty();
    return Stream.of(Stream.of(0), half, Stream.of(before), more).flatMap(each -> each).toList();
  }
}
