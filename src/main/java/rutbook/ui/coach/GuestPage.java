package rutbook.ui.coach;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Setting;
import rutbook.share.CoachPart;
import rutbook.share.GuestFile;
import rutbook.share.SetupFile;
import rutbook.ui.Desk;
import rutbook.ui.FilePicker;
import rutbook.ui.OutsideFiles;
import rutbook.ui.OutsideFiles.Answer;
import rutbook.ui.Page;
import rutbook.ui.Place;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.Scrolling;

/**
 * Another rider's bike on the coach's desk: what was handed over, and a proposal for each setting
 * inside the limits of the rider's own sheet. Every change is kept on the coach's shelf at once.
 */
public final class GuestPage extends Page {
  private final Label title = Keys.prose("", "page-title");
  private final Label error = Keys.prose("", "error");
  private final Label kept = Keys.prose("", "soft");
  private final TextField name = new TextField();
  private final TextArea general = new TextArea();
  private final VBox left = new VBox(10);
  private final VBox right = new VBox(10);
  private final List<GuestSetting> settings = new ArrayList<>();
  private final Button handBack;
  private final boolean hasChecksum;
  private SetupFile file;
  private int shownSetup;

  public GuestPage(Desk desk, OutsideFiles.Opened opened) {
    super(desk);
    this.file = opened.file();
    this.hasChecksum = opened.hasChecksum();
    setId("guest-page");
    setSpacing(10);
    handBack = Keys.mainKey("guest-hand-back", desk.text("coach.hand-back"), this::handBack);
    error.setId("guest-error");
    error.managedProperty().bind(error.textProperty().isNotEmpty());
    kept.setId("guest-kept");
    kept.managedProperty().bind(kept.textProperty().isNotEmpty());
    HBox columns = new HBox(16, Scrolling.column(left, 12), Scrolling.column(right, 8));
    columns.setMinHeight(0);
    VBox.setVgrow(columns, Priority.ALWAYS);
    getChildren().addAll(head(), error, kept, columns);
    build();
    keep();
  }

  private HBox head() {
    Button leave =
        Keys.smallKey(
            "guest-leave", "← " + desk().text("coach.riders"), () -> desk().go(new Place.Coach()));
    title.setText(
        desk().text("coach.guest", file.excerpt().rider().name(), file.excerpt().bike().name()));
    title.setId("guest-title");
    title.setMinWidth(0);
    title.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(title, Priority.ALWAYS);
    HBox head = new HBox(10, leave, title, handBack);
    head.setAlignment(Pos.CENTER_LEFT);
    return head;
  }

  private void build() {
    Optional<CoachPart> coach = file.coach();
    name.setId("guest-name");
    name.setText(coach.map(CoachPart::name).or(() -> desk().kept("coach.name")).orElse(""));
    name.setAccessibleText(desk().text("coach.name"));
    name.focusedProperty().addListener((focus, before, now) -> leftField(now));
    general.setId("guest-general");
    general.setWrapText(true);
    general.setPrefRowCount(4);
    general.setText(coach.map(CoachPart::general).orElse(""));
    general.setAccessibleText(desk().text("coach.general"));
    general.focusedProperty().addListener((focus, before, now) -> leftField(now));
    if (!hasChecksum) {
      left.getChildren().add(Keys.prose(desk().text("coach.no-checksum"), "caution"));
    }
    if (!file.handOver().question().isBlank()) {
      VBox asked =
          new VBox(
              4,
              Keys.label(desk().text("coach.asks"), "group-title"),
              Keys.prose(desk().phrases().safe(file.handOver().question())));
      asked.getStyleClass().add("wash");
      left.getChildren().add(asked);
    }
    left.getChildren().add(Keys.prose(desk().text("coach.propose"), "card-title"));
    for (Setting setting : file.sheet().settings()) {
      GuestSetting row = new GuestSetting(desk(), setting, this::changed);
      settings.add(row);
      left.getChildren().add(row);
    }
    right
        .getChildren()
        .addAll(
            Keys.label(desk().text("coach.name"), "group-title"),
            name,
            Keys.label(desk().text("coach.general"), "group-title"),
            general,
            new GuestRides(desk(), file));
  }

  private void leftField(boolean focused) {
    if (!focused) {
      changed(coach().named(coachName()).advising(general.getText()));
    }
  }

  private String coachName() {
    return name.getText().isBlank() ? desk().text("coach.unnamed") : name.getText().strip();
  }

  private CoachPart coach() {
    return file.coach().orElseGet(() -> CoachPart.of(coachName()));
  }

  private void changed(java.util.function.UnaryOperator<CoachPart> change) {
    changed(change.apply(coach()));
  }

  /** Takes what the coach says into the file, inside the rider's limits, and keeps it. */
  private void changed(CoachPart next) {
    if (next.equals(coach()) || file.coach().isEmpty() && next.saysNothing()) {
      return;
    }
    try {
      file = file.with(next);
      desk().keep("coach.name", next.name());
      error.setText("");
      keep();
    } catch (NotebookException refused) {
      error.setText(desk().settingWords().refusal(refused));
    }
    show(desk().notebook());
  }

  private void keep() {
    desk()
        .outside()
        .keep(
            file,
            answer -> {
              if (answer instanceof Answer.Refused<GuestFile> refused) {
                error.setText(refused.sentence());
              } else if (answer instanceof Answer.Done<GuestFile> done && file.coach().isEmpty()) {
                done.value().file().coach().ifPresent(this::goOnWith);
              }
            });
  }

  /** What was begun on the shelf when the file is opened once more. */
  private void goOnWith(CoachPart begun) {
    file = file.with(begun);
    name.setText(begun.name());
    general.setText(begun.general());
    show(desk().notebook());
  }

  /** The strip above would show the coach's own bike. */
  @Override
  public boolean fillsWindow() {
    return true;
  }

  @Override
  protected void show(Notebook notebook) {
    settings.forEach(row -> row.show(file));
    handBack.setDisable(coach().saysNothing());
  }

  private void handBack() {
    CoachPart said = coach().named(coachName()).advising(general.getText());
    SetupFile answer = file.with(said.handedBackOn(desk().today()));
    desk()
        .picker()
        .toSave(FilePicker.Kind.SETUP, desk().text("coach.file.back", desk().today().toString()))
        .ifPresent(path -> desk().outside().write(path, answer, done -> handedBack(answer, done)));
  }

  private void handedBack(SetupFile answer, Answer<Path> done) {
    if (done instanceof Answer.Refused<Path> refused) {
      error.setText(refused.sentence());
      return;
    }
    file = answer;
    keep();
    kept.setText(desk().text("coach.handed-back"));
    show(desk().notebook());
  }
}
