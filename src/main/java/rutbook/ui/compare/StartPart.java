package rutbook.ui.compare;

import java.util.Optional;
import javafx.scene.layout.VBox;
import rutbook.compare.Choice;
import rutbook.notebook.Track;
import rutbook.reasoning.StartAtTrack;
import rutbook.ui.Desk;
import rutbook.ui.SideChoice;
import rutbook.ui.controls.Keys;
import rutbook.words.StartWords;

/** By which ride a start goes, how alike the tracks are, and where each reading comes from. */
final class StartPart extends VBox {
  private StartPart(Desk desk, Track track, StartAtTrack start) {
    super(4);
    setId("compare-start");
    StartWords words = new StartWords(desk.phrases());
    getChildren()
        .addAll(
            Keys.label(words.title(track.name()), "card-title"),
            Keys.prose(words.like(start, track, desk.notebook().shelf()), "strong"));
    start.settings().forEach(from -> getChildren().add(Keys.prose(words.setting(from))));
    if (start.like().isPresent()) {
      getChildren().add(Keys.prose(words.how(), "soft"));
    }
    getChildren().add(Keys.prose(words.caution(), "soft"));
  }

  /** Empty for a side that is no start. */
  static Optional<StartPart> of(Desk desk, SideChoice.Made made) {
    return made.subject().choice() instanceof Choice.StartAt it
        ? made.start().map(start -> new StartPart(desk, it.track(), start))
        : Optional.empty();
  }
}
