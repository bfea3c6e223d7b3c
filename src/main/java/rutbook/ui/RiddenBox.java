package rutbook.ui;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import rutbook.edit.MotoEdit;
import rutbook.notebook.BikeId;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoId;
import rutbook.notebook.Notebook;
import rutbook.notebook.Timeline;
import rutbook.reasoning.AfterRide;
import rutbook.reasoning.Complaint;
import rutbook.reasoning.RiddenProposal;
import rutbook.reasoning.RuleBook;
import rutbook.ui.controls.Keys;
import rutbook.words.RiddenWords;

/**
 * The one question after a moto with a suggestion in it, with the ways on from there. It stands
 * wherever the suggestion waits for its answer, and is not there at all otherwise.
 */
public final class RiddenBox extends VBox {
  private final Desk desk;
  private final Predicate<RiddenProposal> wanted;
  private final boolean leadsToTheSession;
  private boolean folded;
  private boolean openedByHand;
  private boolean saidAtFirst;
  private Optional<MotoId> decided = Optional.empty();
  private Optional<AfterRide> shown = Optional.empty();
  private final Label error = Keys.prose("", "error");
  private Optional<Meant> known = Optional.empty();

  /** What it was meant to help follows from the motos before it, and is kept while these stay. */
  private record Meant(RiddenProposal of, List<Complaint> complaints) {
    boolean holds(RiddenProposal other) {
      return of.proposal().id().equals(other.proposal().id())
          && of.session().motos().subList(0, of.at()).equals(before(other));
    }

    private static List<Moto> before(RiddenProposal other) {
      return other.session().motos().subList(0, other.at());
    }
  }

  /** The answer with what was worked out for it. */
  private record Found(Meant meant, AfterRide after) {}

  /**
   * @param wanted whether this place is one for the question
   * @param leadsToTheSession whether the session is elsewhere
   */
  public RiddenBox(Desk desk, Predicate<RiddenProposal> wanted, boolean leadsToTheSession) {
    super(8);
    this.desk = desk;
    this.wanted = wanted;
    this.leadsToTheSession = leadsToTheSession;
    setId("ridden");
    getStyleClass().addAll("card", "chosen");
    error.setId("ridden-error");
    error.managedProperty().bind(error.textProperty().isNotEmpty());
    hide();
  }

  /**
   * Folded to one row with a key that opens it, so that nothing moves under a rider who enters
   * feel; decided once for each moto, when it is first shown.
   *
   * @param low whether there is little room
   */
  public void foldUnlessSaid(Moto moto, boolean low) {
    if (!decided.equals(Optional.of(moto.id()))) {
      decided = Optional.of(moto.id());
      openedByHand = false;
      saidAtFirst = !moto.report().feel().isEmpty() || !moto.report().laps().isEmpty();
    }
    folded = !openedByHand && (low || !saidAtFirst);
  }

  /** Shows the question of a bike as the notebook is now. */
  public void show(BikeId bike) {
    Notebook notebook = desk.notebook();
    Timeline timeline = desk.timeline(bike);
    Optional<RiddenProposal> open = RiddenProposal.open(timeline).filter(wanted);
    if (open.isEmpty()) {
      hide();
      return;
    }
    RiddenProposal ridden = open.get();
    Optional<Meant> before = known.filter(it -> it.holds(ridden));
    RuleBook rules = desk.rules();
    desk.background()
        .run(
            "after a ride",
            () -> {
              List<Complaint> meant =
                  before
                      .map(Meant::complaints)
                      .orElseGet(() -> AfterRide.meant(notebook, ridden, rules));
              return new Found(new Meant(ridden, meant), AfterRide.of(timeline, ridden, meant));
            },
            found -> {
              known = Optional.of(found.meant());
              draw(found.after());
            },
            fault -> {
              throw new IllegalStateException(fault);
            });
  }

  private void hide() {
    setVisible(false);
    setManaged(false);
    shown = Optional.empty();
    getChildren().clear();
  }

  private void draw(AfterRide after) {
    RiddenWords words = new RiddenWords(desk.phrases());
    shown = Optional.of(after);
    Optional<String> focused = focused();
    error.setText("");
    setVisible(true);
    setManaged(true);
    Label title = Keys.prose(words.title(after.ridden()), folded ? "strong" : "card-title");
    getStyleClass().remove("folded");
    if (folded) {
      getStyleClass().add("folded");
      getChildren().setAll(row(title, after));
    } else {
      getChildren().setAll(title);
      body(after, words);
    }
    getChildren().add(error);
    focused.map(id -> lookup("#" + id)).ifPresent(Node::requestFocus);
  }

  private Node row(Label title, AfterRide after) {
    HBox.setHgrow(title, Priority.ALWAYS);
    title.setMaxWidth(Double.MAX_VALUE);
    title.setMinWidth(0);
    HBox row = new HBox(12, title);
    row.setMinHeight(44);
    row.setAlignment(Pos.CENTER_LEFT);
    if (after.ridden().isRidden()) {
      row.getChildren().add(Keys.key("ridden-open", desk.text("ridden.open"), this::openByHand));
    }
    return row;
  }

  private void openByHand() {
    openedByHand = true;
    folded = false;
    shown.ifPresent(this::draw);
    Optional.ofNullable(lookup(".key")).ifPresent(Node::requestFocus);
  }

  private void body(AfterRide after, RiddenWords words) {
    if (after.ridden().isRidden()) {
      for (int i = 0; i < after.asked().size(); i++) {
        AfterRide.Asked asked = after.asked().get(i);
        getChildren()
            .add(new RiddenQuestion(words, asked, i, severity -> say(after, asked, severity)));
      }
      words.verdict(after).forEach(said -> getChildren().add(Keys.prose(said, "soft")));
    } else {
      getChildren().add(Keys.prose(words.toRide()));
      after.asked().forEach(each -> getChildren().add(Keys.prose(words.meant(each), "soft")));
    }
    FlowPane ways = ways(after, words);
    if (!ways.getChildren().isEmpty()) {
      getChildren().add(ways);
    }
  }

  /** Whoever answers by keyboard stays where they were. */
  private Optional<String> focused() {
    return Optional.ofNullable(getScene())
        .map(scene -> scene.getFocusOwner())
        .filter(node -> node != this && isWithin(node))
        .map(Node::getId);
  }

  private boolean isWithin(Node node) {
    Node above = node;
    while (above != null && above != this) {
      above = above.getParent();
    }
    return above == this;
  }

  private void say(AfterRide after, AfterRide.Asked asked, int severity) {
    RiddenProposal ridden = after.ridden();
    desk.make(
        new MotoEdit.NoteFeel(
            ridden.session().id(),
            ridden.last().id(),
            asked.now().orElse(asked.before()).withSeverity(severity)));
  }

  private FlowPane ways(AfterRide after, RiddenWords words) {
    RiddenStep steps = new RiddenStep(desk, after.ridden());
    FlowPane ways = new FlowPane(8, 8);
    List<AfterRide.Step> possible = after.advised().stream().filter(steps::isPossible).toList();
    IntStream.range(0, possible.size())
        .forEach(
            i -> {
              AfterRide.Step step = possible.get(i);
              String id = "ridden-" + step.name();
              String text = words.step(after.ridden(), step, steps.isLater());
              boolean advised = i == 0 && !after.hasOpenQuestion();
              ways.getChildren()
                  .add(
                      advised
                          ? Keys.mainKey(id, text, () -> take(steps, step))
                          : Keys.key(id, text, () -> take(steps, step)));
            });
    if (leadsToTheSession) {
      Place session = new Place.Session(after.ridden().session().id());
      ways.getChildren()
          .add(Keys.key("ridden-session", desk.text("ridden.session"), () -> desk.go(session)));
    }
    return ways;
  }

  private void take(RiddenStep steps, AfterRide.Step step) {
    steps.take(step).ifPresent(fault -> error.setText(desk.settingWords().refusal(fault)));
  }
}
