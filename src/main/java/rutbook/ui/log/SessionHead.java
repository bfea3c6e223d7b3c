package rutbook.ui.log;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import rutbook.notebook.Conditions;
import rutbook.notebook.Entry;
import rutbook.ui.Desk;
import rutbook.ui.Place;
import rutbook.ui.controls.Keys;

/** Where and when a session was, under which conditions, and what is done with the whole of it. */
final class SessionHead extends HBox {
  private final Desk desk;
  private final Label title = Keys.label("", "page-title");
  private final Label conditions = Keys.label("", "soft");

  /**
   * @param check opens the end-of-day check
   * @param add adds a moto
   */
  SessionHead(Desk desk, Runnable check, Runnable add) {
    super(10);
    this.desk = desk;
    title.setId("session-title");
    title.setMinWidth(0);
    conditions.setMinWidth(0);
    VBox text = new VBox(title, conditions);
    text.setMinWidth(0);
    setHgrow(text, Priority.ALWAYS);
    getChildren()
        .addAll(
            Keys.smallKey(
                "session-back", "← " + desk.text("session.back"), () -> desk.go(new Place.Log())),
            text,
            Keys.key("session-check", desk.text("session.check"), check),
            Keys.mainKey("session-add", desk.text("session.add"), add));
    setAlignment(Pos.CENTER_LEFT);
  }

  void show(SessionModel model) {
    title.setText(
        desk.text("session.title", model.track(), desk.words().day(model.session().day())));
    conditions.setText(conditions(model.session()));
  }

  private String conditions(Entry.Session session) {
    Conditions now = session.conditions();
    Stream<String> parts =
        Stream.of(
                now.ground().map(desk.words()::name),
                now.moisture().map(desk.words()::name),
                now.roughness().isPresent()
                    ? Optional.of(desk.text("session.roughness", now.roughness().getAsInt()))
                    : Optional.<String>empty(),
                now.air().map(desk.settingWords()::amount),
                session.head().meter().map(desk.settingWords()::amount))
            .flatMap(Optional::stream);
    String text = parts.collect(Collectors.joining(" · "));
    return text.isEmpty() ? desk.text("session.nothing") : text;
  }
}
