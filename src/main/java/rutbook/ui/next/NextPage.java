package rutbook.ui.next;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import rutbook.notebook.Bike;
import rutbook.notebook.BikeId;
import rutbook.notebook.Entry;
import rutbook.notebook.Notebook;
import rutbook.notebook.Timeline;
import rutbook.notebook.Track;
import rutbook.reasoning.Bother;
import rutbook.reasoning.GateCard;
import rutbook.reasoning.Ledger;
import rutbook.reasoning.NextChange;
import rutbook.reasoning.RuleBook;
import rutbook.reasoning.Suggestion;
import rutbook.ui.Desk;
import rutbook.ui.NoBike;
import rutbook.ui.Page;
import rutbook.ui.RiddenBox;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.Scrolling;
import rutbook.ui.controls.Severity;
import rutbook.words.ReasoningWords;

/** Which one setting to change next, after what comes first, and what the notebook knows. */
public final class NextPage extends Page {
  private final Label after = Keys.prose("", "soft");
  private final VBox left = new VBox(12);
  private final VBox right = new VBox(12);
  private final ToggleButton known;
  private final Region leftColumn;
  private final RiddenBox ridden;
  private Optional<NextChange> found = Optional.empty();

  public NextPage(Desk desk) {
    super(desk);
    setId("next-page");
    setSpacing(12);
    ridden = new RiddenBox(desk, open -> true, true);
    known = Keys.choice("next-known", desk.text("next.known"), this::draw);
    VBox title = new VBox(2, Keys.label(desk.text("next.title"), "page-title"), after);
    title.setMinWidth(0);
    HBox.setHgrow(title, Priority.ALWAYS);
    HBox head = new HBox(12, title, known);
    head.setAlignment(Pos.CENTER_LEFT);
    after.setId("next-after");
    leftColumn = column(left);
    leftColumn.setMinWidth(250);
    leftColumn.setPrefWidth(300);
    Region rightColumn = column(right);
    HBox.setHgrow(rightColumn, Priority.ALWAYS);
    HBox columns = new HBox(16, leftColumn, rightColumn);
    columns.setMinHeight(0);
    VBox.setVgrow(columns, Priority.ALWAYS);
    getChildren().addAll(head, columns);
  }

  private static ScrollPane column(VBox content) {
    ScrollPane scroll = Scrolling.of(content);
    scroll.setMinWidth(0);
    scroll.setPrefWidth(100);
    return scroll;
  }

  @Override
  protected void show(Notebook notebook) {
    Optional<Bike> bike = desk().bike();
    if (bike.isEmpty()) {
      after.setText(desk().text("next.nobike"));
      left.getChildren().clear();
      right.getChildren().setAll(new NoBike(desk(), desk().text("next.nobike.more")));
      leftColumn.setVisible(false);
      leftColumn.setManaged(false);
      return;
    }
    after.setText(after(notebook, bike.get().id()));
    ridden.show(bike.get().id());
    RuleBook rules = desk().rules();
    desk()
        .background()
        .run(
            "next change",
            () -> NextChange.of(notebook, bike.get().id(), rules),
            next -> {
              found = Optional.of(next);
              draw();
            },
            fault -> {
              throw new IllegalStateException(fault);
            });
  }

  private String after(Notebook notebook, BikeId bike) {
    return Timeline.of(notebook, bike)
        .latest(Entry.Session.class)
        .filter(session -> !session.motos().isEmpty())
        .map(
            session ->
                desk()
                    .text(
                        "next.after",
                        session.motos().size(),
                        notebook.shelf().track(session.track()).map(Track::name).orElse(""),
                        desk().words().day(session.day())))
        .orElseGet(() -> desk().text("next.nothing"));
  }

  private void draw() {
    if (found.isEmpty()) {
      return;
    }
    NextChange next = found.get();
    ReasoningWords words = new ReasoningWords(desk().phrases());
    left(next, words);
    leftColumn.setVisible(!known.isSelected());
    leftColumn.setManaged(!known.isSelected());
    if (known.isSelected()) {
      Ledger ledger =
          Ledger.of(desk().notebook(), desk().bike().orElseThrow().id(), desk().rules());
      right.getChildren().setAll(new LedgerView(desk(), ledger));
    } else {
      right(next, words);
    }
  }

  private void left(NextChange next, ReasoningWords words) {
    left.getChildren().clear();
    for (GateCard gate : next.gates()) {
      left.getChildren().add(new GateBox(desk(), words, gate));
    }
    VBox now = new VBox(8, Keys.prose(words.nowHeading(!felt(next).isEmpty()), "card-title"));
    now.getStyleClass().add("card");
    now.setId("next-now");
    felt(next).forEach(each -> now.getChildren().add(bother(words, each)));
    if (!next.now().isEmpty()) {
      now.getChildren().add(Keys.key("next-feel", desk().text("next.correct"), this::correct));
    }
    left.getChildren().add(now);
    if (!next.ask().isEmpty()) {
      VBox ask = new VBox(6, Keys.label(desk().text("next.ask"), "card-title"));
      ask.getStyleClass().add("card");
      next.ask().forEach(each -> ask.getChildren().add(Keys.prose(words.ask(each), "soft")));
      left.getChildren().add(ask);
    }
  }

  private static List<Bother> felt(NextChange next) {
    return next.now().stream().filter(Bother::isFelt).toList();
  }

  private Node bother(ReasoningWords words, Bother each) {
    Label name = Keys.prose(words.complaint(each.complaint()));
    name.setMinWidth(0);
    HBox.setHgrow(name, Priority.ALWAYS);
    name.setMaxWidth(Double.MAX_VALUE);
    int squares = (int) Math.max(1, Math.min(5, Math.round(each.expected())));
    HBox row = new HBox(8, name, new Severity(squares, ""));
    row.setAlignment(Pos.CENTER_LEFT);
    return row;
  }

  /** What bothers is put right where it was said: in the feel of the last moto. */
  private void correct() {
    desk()
        .timeline(desk().bike().orElseThrow().id())
        .latest(Entry.Session.class)
        .ifPresent(session -> desk().go(new rutbook.ui.Place.Session(session.id())));
  }

  private void right(NextChange next, ReasoningWords words) {
    right.getChildren().setAll(ridden);
    Label kind = Keys.prose(words.kind(next.kind()), "card-title");
    kind.setId("next-kind");
    right.getChildren().add(kind);
    if (Instead.isFor(next.kind())) {
      right.getChildren().add(new Instead(desk(), next.kind()));
    }
    boolean aside = next.kind() == NextChange.Kind.LEAVE_ALONE;
    if (aside && !next.suggestions().isEmpty()) {
      right.getChildren().add(Keys.prose(words.finerHeading(), "soft"));
    }
    words.trust(next).ifPresent(said -> right.getChildren().add(Keys.prose(said, "soft")));
    boolean first = !aside && !ridden.isVisible();
    for (int i = 0; i < next.suggestions().size(); i++) {
      Suggestion each = next.suggestions().get(i);
      Optional<String> putOff = new PutOff(desk()).why(each);
      if (putOff.isPresent()) {
        String said = desk().text("next.put.off", words.suggestion(each), putOff.get());
        right.getChildren().add(Keys.prose(said, "soft"));
      } else {
        right.getChildren().add(new SuggestionCard(desk(), each, next.now(), i, first));
        first = false;
      }
    }
    if (!next.suggestions().isEmpty()) {
      right.getChildren().add(Keys.prose(words.howToTest(), "soft"));
    }
  }
}
