package rutbook.ui.coach;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import rutbook.notebook.Bike;
import rutbook.notebook.Entry;
import rutbook.notebook.Notebook;
import rutbook.notebook.Source;
import rutbook.notebook.Timeline;
import rutbook.ui.Desk;
import rutbook.ui.FilePicker;
import rutbook.ui.NoBike;
import rutbook.ui.Page;
import rutbook.ui.Place;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.OneStop;
import rutbook.ui.controls.Scrolling;

/** What was handed over and what came back; and for a coach, the shelf of riders. */
public final class CoachPage extends Page {
  private static final String SIDE = "coach.side";
  private static final String RIDERS = "riders";

  private final ToggleButton mine;
  private final ToggleButton riders;
  private final Button handOver;
  private final Label error = Keys.prose("", "error");
  private final VBox body = new VBox(12);
  private final RiderShelf shelf;

  public CoachPage(Desk desk) {
    super(desk);
    setId("coach-page");
    setSpacing(12);
    shelf = new RiderShelf(desk);
    mine = Keys.choice("coach-mine", desk.text("coach.mine"), () -> choose(""));
    riders = Keys.choice("coach-riders", desk.text("coach.riders"), () -> choose(RIDERS));
    handOver = Keys.mainKey("coach-hand-over", desk.text("coach.hand-over"), this::newThing);
    Button open = Keys.key("coach-open", desk.text("coach.open"), this::open);
    HBox sides = new HBox(6, mine, riders);
    sides.setAlignment(Pos.CENTER_LEFT);
    OneStop.of(sides);
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    Label title = Keys.label(desk.text("coach.title"), "page-title");
    HBox head = new HBox(14, title, sides, gap, open, handOver);
    head.setAlignment(Pos.CENTER_LEFT);
    error.setId("coach-error");
    error.managedProperty().bind(error.textProperty().isNotEmpty());
    getChildren().addAll(head, error, Scrolling.page(body));
  }

  @Override
  protected void newThing() {
    if (desk().bike().isPresent()) {
      desk().go(new Place.HandOver());
    }
  }

  @Override
  protected void search() {
    choose(RIDERS);
    shelf.requestFocus();
  }

  private void choose(String side) {
    desk().keep(SIDE, side);
    show(desk().notebook());
  }

  private void open() {
    desk()
        .picker()
        .toOpen(FilePicker.Kind.SETUP)
        .ifPresent(path -> desk().openSetup(path, error::setText));
  }

  @Override
  protected void show(Notebook notebook) {
    boolean theirs = desk().kept(SIDE).filter(RIDERS::equals).isPresent();
    mine.setSelected(!theirs);
    riders.setSelected(theirs);
    handOver.setDisable(desk().bike().isEmpty());
    if (theirs) {
      shelf.look();
      body.getChildren().setAll(shelf);
    } else {
      body.getChildren().setAll(mine());
    }
  }

  private List<Node> mine() {
    Optional<Bike> bike = desk().bike();
    List<Entry.HandedOver> handed =
        bike.map(it -> desk().timeline(it.id()).entries(Entry.HandedOver.class)).orElse(List.of());
    if (handed.isEmpty()) {
      return List.of(
          bike.isEmpty()
              ? new NoBike(desk(), desk().text("coach.nobike"))
              : Keys.prose(desk().text("coach.nothing"), "wash"));
    }
    List<Node> rows = new ArrayList<>();
    Timeline timeline = desk().timeline(bike.orElseThrow().id());
    List<Entry.HandedOver> newest = new ArrayList<>(handed);
    Collections.reverse(newest);
    newest.forEach(each -> rows.add(row(timeline, each)));
    return rows;
  }

  private Node row(Timeline timeline, Entry.HandedOver handed) {
    List<Entry.Advice> answers =
        timeline.entries(Entry.Advice.class).stream()
            .filter(
                advice ->
                    advice.source() instanceof Source.Coach coach
                        && coach.handOver().equals(handed.handOver()))
            .toList();
    Label day = Keys.label(desk().text("coach.handed", handed.day()), "card-title");
    VBox card = new VBox(8, day);
    card.getStyleClass().add("card");
    card.setId("handed-" + handed.handOver());
    if (answers.isEmpty()) {
      card.getChildren().add(Keys.prose(desk().text("coach.waiting"), "due"));
    }
    for (Entry.Advice advice : answers) {
      card.getChildren().add(new AdviceView(desk(), timeline, advice));
    }
    return card;
  }
}
