package rutbook.ui.coach;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import rutbook.notebook.Change;
import rutbook.notebook.Entry;
import rutbook.notebook.Feel;
import rutbook.notebook.Lap;
import rutbook.notebook.Moto;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Shared;
import rutbook.notebook.Sheet;
import rutbook.notebook.Track;
import rutbook.share.ChosenSetup;
import rutbook.share.SetupFile;
import rutbook.ui.Desk;
import rutbook.ui.controls.Keys;
import rutbook.words.ShareWords;

/** What a guest rode with it: setups, sessions with changes and feel, sag. */
final class GuestRides extends VBox {
  private final Desk desk;
  private final SetupFile file;

  GuestRides(Desk desk, SetupFile file) {
    super(10);
    this.desk = desk;
    this.file = file;
    setId("guest-rides");
    ShareWords words = new ShareWords(desk.phrases());
    VBox setups = new VBox(4, Keys.label(desk.text("coach.setups"), "card-title"));
    for (ChosenSetup each : file.setups()) {
      setups
          .getChildren()
          .add(Keys.prose(words.setup(each), each.equals(file.asked()) ? "strong" : "soft"));
    }
    getChildren().add(setups);
    file.excerpt().sag().forEach(sag -> getChildren().add(sag(sag)));
    file.excerpt().sessions().forEach(session -> getChildren().add(session(session)));
  }

  private Label sag(Entry.SagMeasured sag) {
    String end = desk.words().label(sag.end());
    return sag.race()
        .map(race -> Keys.prose(desk.text("coach.race-sag", end, desk.settingWords().amount(race))))
        .orElseGet(
            () ->
                Keys.prose(
                    desk.text(
                        "coach.free-sag",
                        end,
                        desk.settingWords().amount(sag.free().orElseThrow()))));
  }

  private Node session(Entry.Session session) {
    String track =
        file.handOver().shares(Shared.PLACE_NAMES)
            ? file.excerpt().track(session).map(Track::name).orElse("")
            : desk.text("coach.place");
    VBox card =
        new VBox(
            4,
            Keys.prose(
                desk.text("session.title", track, desk.words().day(session.day())), "card-title"));
    card.getStyleClass().add("card");
    Sheet sheet = file.excerpt().bike().sheetOn(session.day());
    Setup before = session.start();
    for (int i = 0; i < session.motos().size(); i++) {
      Moto moto = session.motos().get(i);
      card.getChildren().add(Keys.label(desk.words().label(moto.kind()) + " " + (i + 1), "strong"));
      for (Change change : moto.changes()) {
        card.getChildren().add(change(sheet, before, change));
      }
      before = before.after(moto.changes());
      moto.report().feel().forEach(feel -> card.getChildren().add(feel(feel)));
      List<Lap> laps = moto.report().laps();
      if (!laps.isEmpty()) {
        card.getChildren()
            .add(
                Keys.prose(
                    String.join(
                        " · ", laps.stream().map(lap -> desk.words().lap(lap.millis())).toList()),
                    "soft"));
      }
      if (!moto.note().isBlank()) {
        card.getChildren().add(Keys.prose(desk.phrases().safe(moto.note()), "soft"));
      }
    }
    return card;
  }

  private Label change(Sheet sheet, Setup before, Change change) {
    Setting setting = sheet.setting(change.setting()).orElseThrow();
    Reading from = before.reading(change.setting()).orElse(change.to());
    return Keys.prose(
        desk.text(
            "coach.proposal",
            setting.name(),
            desk.settingWords().change(setting, from, change.to())),
        "blue");
  }

  private Label feel(Feel feel) {
    return Keys.prose(
        desk.text(
            "coach.feel",
            desk.words().label(feel.end()),
            desk.words().name(feel.symptom()),
            desk.words().name(feel.section()),
            feel.severity()));
  }
}
