package rutbook.ui.coach;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import rutbook.compare.Subject;
import rutbook.edit.AdviceEdit;
import rutbook.notebook.Bike;
import rutbook.notebook.Entry;
import rutbook.notebook.HandOverId;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Shared;
import rutbook.notebook.Timeline;
import rutbook.share.HandOver;
import rutbook.share.Packing;
import rutbook.share.Preview;
import rutbook.share.SetupFile;
import rutbook.share.ShareException;
import rutbook.ui.Desk;
import rutbook.ui.FilePicker;
import rutbook.ui.OutsideFiles.Answer;
import rutbook.ui.Page;
import rutbook.ui.Place;
import rutbook.ui.SideChoice;
import rutbook.ui.SideOptions;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.Scrolling;
import rutbook.words.ShareWords;

/** Choosing what is handed over, beside everything that will be in the file. */
public final class HandOverPage extends Page {
  private static final int MOST_SHOWN = 10;

  private final HandOverId id;
  private final Set<String> chosen = new LinkedHashSet<>(List.of("now"));
  private final Map<Shared, CheckBox> ticks = new EnumMap<>(Shared.class);
  private final TextField search = new TextField();
  private final TextField by = new TextField();
  private final TextArea question = new TextArea();
  private final CheckBox card = new CheckBox();
  private final VBox setups = new VBox(2);
  private final VBox preview = new VBox(6);
  private final Label error = Keys.prose("", "error");
  private final Button write;
  private Optional<SideOptions> options = Optional.empty();
  private Optional<SetupFile> file = Optional.empty();

  public HandOverPage(Desk desk) {
    super(desk);
    setId("hand-over-page");
    setSpacing(12);
    id = new HandOverId(desk.ids().next());
    write = Keys.mainKey("hand-over-write", desk.text("coach.write"), this::write);
    error.setId("hand-over-error");
    error.managedProperty().bind(error.textProperty().isNotEmpty());
    HBox columns = new HBox(16, Scrolling.column(choices(), 10), Scrolling.column(seen(), 10));
    columns.setMinHeight(0);
    VBox.setVgrow(columns, Priority.ALWAYS);
    getChildren().addAll(head(), error, columns);
  }

  private HBox head() {
    Button leave =
        Keys.smallKey(
            "hand-over-leave",
            "← " + desk().text("coach.title"),
            () -> desk().go(new Place.Coach()));
    Label title = Keys.label(desk().text("coach.hand-over.title"), "page-title");
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    HBox head = new HBox(10, leave, title, gap, write);
    head.setAlignment(Pos.CENTER_LEFT);
    return head;
  }

  private VBox choices() {
    search.setId("hand-over-search");
    search.setPromptText(desk().text("coach.find.setup"));
    search.setAccessibleText(desk().text("coach.find.setup"));
    search.textProperty().addListener((text, before, now) -> showSetups());
    by.setId("hand-over-by");
    by.setAccessibleText(desk().text("coach.by"));
    by.textProperty().addListener((text, before, now) -> pack());
    question.setId("hand-over-question");
    question.setPrefRowCount(3);
    question.setWrapText(true);
    question.setAccessibleText(desk().text("coach.question"));
    question.textProperty().addListener((text, before, now) -> pack());
    return new VBox(
        8,
        Keys.label(desk().text("coach.what"), "card-title"),
        search,
        setups,
        Keys.label(desk().text("coach.question"), "group-title"),
        question,
        Keys.label(desk().text("coach.by"), "group-title"),
        by);
  }

  private CheckBox tick(String tickId, String text) {
    CheckBox tick = new CheckBox(text);
    tick.setId(tickId);
    tick.getStyleClass().add("large-target");
    tick.setOnAction(event -> pack());
    return tick;
  }

  /** What is ticked stands over what it does to the file. */
  private VBox seen() {
    FlowPane goes = new FlowPane(18, 0);
    for (Shared each : Shared.values()) {
      CheckBox tick = tick("tick-" + each, new ShareWords(desk().phrases()).tick(each));
      ticks.put(each, tick);
      goes.getChildren().add(tick);
    }
    card.setId("hand-over-card");
    card.setText(desk().text("coach.card"));
    card.getStyleClass().add("large-target");
    card.setWrapText(true);
    preview.setId("hand-over-preview");
    VBox seen = new VBox(8, Keys.label(desk().text("coach.preview"), "card-title"), preview);
    seen.getStyleClass().add("wash");
    return new VBox(6, Keys.label(desk().text("coach.also"), "card-title"), goes, card, seen);
  }

  @Override
  protected void show(Notebook notebook) {
    Optional<Bike> bike = desk().bike();
    options =
        bike.map(
            it -> new SideOptions(notebook.shelf(), desk().timeline(it.id()), desk().phrases()));
    if (bike.isPresent() && by.getText().isEmpty()) {
      Packing.rider(notebook, desk().timeline(bike.get().id()), List.of())
          .ifPresent(rider -> by.setText(rider.name()));
    }
    showSetups();
    pack();
  }

  private void showSetups() {
    setups.getChildren().clear();
    Set<String> fitting = new HashSet<>();
    options.ifPresent(all -> all.onBike(search.getText()).forEach(it -> fitting.add(it.key())));
    int more = 0;
    for (SideChoice option : offered()) {
      boolean picked = chosen.contains(option.key());
      boolean fits = fitting.contains(option.key());
      if (picked || fits && setups.getChildren().size() < MOST_SHOWN) {
        CheckBox tick = new CheckBox(options.orElseThrow().said(option));
        tick.setId("setup-" + option.key().replaceAll("[^A-Za-z0-9-]", "-"));
        tick.getStyleClass().add("large-target");
        tick.setMnemonicParsing(false);
        tick.setSelected(picked);
        tick.setOnAction(event -> choose(option, tick.isSelected()));
        setups.getChildren().add(tick);
      } else if (fits) {
        more++;
      }
    }
    if (more > 0) {
      setups.getChildren().add(Keys.prose(desk().text("coach.more.setups", more), "soft"));
    }
  }

  private List<SideChoice> offered() {
    return options.map(all -> all.onBike("")).orElse(List.of());
  }

  private void choose(SideChoice option, boolean goes) {
    if (goes) {
      chosen.add(option.key());
    } else {
      chosen.remove(option.key());
    }
    pack();
  }

  /** Makes the file as it would be, so that the preview cannot say less than is in it. */
  private void pack() {
    file = Optional.empty();
    preview.getChildren().clear();
    ShareWords words = new ShareWords(desk().phrases());
    try {
      desk().bike().ifPresent(bike -> file = Optional.of(packed(bike)));
      error.setText("");
    } catch (ShareException cannot) {
      error.setText(words.sentence(cannot));
    } catch (NotebookException refused) {
      error.setText(desk().settingWords().refusal(refused));
    }
    write.setDisable(file.isEmpty());
    file.map(Preview::of)
        .map(words::preview)
        .orElse(List.of())
        .forEach(line -> preview.getChildren().add(Keys.prose(line)));
  }

  private SetupFile packed(Bike bike) {
    Timeline timeline = desk().timeline(bike.id());
    List<Subject> subjects = new ArrayList<>();
    for (SideChoice option : offered()) {
      if (chosen.contains(option.key())) {
        subjects.add(option.onBike(timeline));
      }
    }
    Set<Shared> shared = EnumSet.noneOf(Shared.class);
    ticks.forEach(
        (what, tick) -> {
          if (tick.isSelected()) {
            shared.add(what);
          }
        });
    HandOver handOver =
        new HandOver(
            id, desk().notebook().id(), desk().today(), shared, question.getText().strip());
    String name = by.getText().strip();
    return Packing.of(
        desk().notebook(),
        timeline,
        subjects,
        handOver,
        name.isEmpty() ? Optional.empty() : Optional.of(name));
  }

  private void write() {
    SetupFile made = file.orElseThrow();
    String name = desk().text("coach.file", desk().today().toString());
    desk()
        .picker()
        .toSave(FilePicker.Kind.SETUP, name)
        .ifPresent(path -> desk().outside().write(path, made, done -> written(made, done)));
  }

  /** The record is kept once the file is there. */
  private void written(SetupFile made, Answer<Path> answer) {
    if (answer instanceof Answer.Refused<Path> refused) {
      error.setText(refused.sentence());
      return;
    }
    Path path = ((Answer.Done<Path>) answer).value();
    Bike bike = desk().bike().orElseThrow();
    Entry.HandedOver record =
        new Entry.HandedOver(
            desk().headToday(bike),
            made.handOver().id(),
            made.snapshot(),
            desk().outside().checksum(made));
    Optional<NotebookException> refused = desk().make(new AdviceEdit.HandOver(record));
    if (refused.isPresent()) {
      error.setText(desk().settingWords().refusal(refused.get()));
    } else if (card.isSelected()) {
      desk().outside().writeCard(path, made, this::cardWritten);
    } else {
      desk().go(new Place.Coach());
    }
  }

  private void cardWritten(Answer<Path> answer) {
    if (answer instanceof Answer.Refused<Path> refused) {
      error.setText(refused.sentence());
    } else {
      desk().go(new Place.Coach());
    }
  }
}
