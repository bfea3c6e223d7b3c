package rutbook.ui.log;

import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ScrollPane.ScrollBarPolicy;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import rutbook.ui.Desk;
import rutbook.ui.controls.Keys;
import rutbook.units.Display;

/**
 * The motos side by side, with what was changed standing on the link between two of them. The start
 * of the day stays in sight; where the motos are wider than the page, they scroll to the chosen
 * one.
 */
final class Chain extends HBox {
  private static final double BAR_HEIGHT = 12;

  /** What is faded of a card at the left; a link begins with its bar. */
  private static final double FADE = 12;

  private final Desk desk;
  private final HBox row =
      new HBox() {
        @Override
        protected void layoutChildren() {
          super.layoutChildren();
          toTheChosen();
        }
      };
  private final ScrollPane scroll = new ScrollPane(row);
  private final Button start;
  private final IntConsumer chooseMoto;
  private final IntConsumer chooseLink;
  private int chosen = -1;
  private Display units;

  /**
   * @param chooseMoto gets the place of a moto, from 0; -1 for the start of the day
   * @param chooseLink gets the place of the moto after the link
   */
  Chain(Desk desk, IntConsumer chooseMoto, IntConsumer chooseLink) {
    this.desk = desk;
    this.chooseMoto = chooseMoto;
    this.chooseLink = chooseLink;
    setId("chain");
    start = Keys.key("chain-start", "", () -> chooseMoto.accept(-1));
    start.getStyleClass().addAll("moto-card", "chain-start");
    start.setMaxHeight(Double.MAX_VALUE);
    scroll.setId("chain-scroll");
    scroll.setFitToHeight(true);
    scroll.setVbarPolicy(ScrollBarPolicy.NEVER);
    scroll.setFocusTraversable(false);
    scroll.setMinWidth(0);
    row.setAlignment(Pos.CENTER_LEFT);
    row.getStyleClass().add("chain-row");
    scroll.viewportBoundsProperty().addListener((bounds, before, now) -> toTheChosen());
    start.setMinWidth(USE_PREF_SIZE);
    VBox fixed = new VBox(start);
    fixed.setMinWidth(USE_PREF_SIZE);
    VBox.setVgrow(start, Priority.ALWAYS);
    fixed.getStyleClass().add("chain-row");
    StackPane faded =
        new StackPane(scroll, fade("left", Pos.CENTER_LEFT), fade("right", Pos.CENTER_RIGHT));
    faded.setMinWidth(0);
    HBox.setHgrow(faded, Priority.ALWAYS);
    getChildren().addAll(fixed, faded);
  }

  /** Where the chain goes on beyond the edge, it fades there. */
  private Region fade(String side, Pos where) {
    Region fade = new Region();
    fade.getStyleClass().addAll("chain-fade", side);
    fade.setMouseTransparent(true);
    StackPane.setAlignment(fade, where);
    BooleanBinding wider =
        Bindings.createBooleanBinding(
            () -> row.getWidth() > scroll.getViewportBounds().getWidth() + 1,
            row.widthProperty(),
            scroll.viewportBoundsProperty());
    fade.visibleProperty()
        .bind(
            wider.and(
                where == Pos.CENTER_LEFT
                    ? scroll.hvalueProperty().greaterThan(0.001)
                    : scroll.hvalueProperty().lessThan(0.999)));
    return fade;
  }

  /** As tall as its cards and the bar that scrolls them, whatever is below. */
  @Override
  protected double computePrefHeight(double width) {
    return row.prefHeight(-1) + BAR_HEIGHT;
  }

  @Override
  protected double computeMinHeight(double width) {
    return computePrefHeight(width);
  }

  /**
   * @param low whether there is little height
   */
  void show(SessionModel model, int newlyChosen, boolean entering, boolean low) {
    showStart(model, newlyChosen < 0);
    List<Node> shown = row.getChildren();
    if (!desk.notebook().display().equals(units)) {
      units = desk.notebook().display();
      shown.clear();
    }
    while (shown.size() > model.rides().size() * 2) {
      shown.remove(shown.size() - 1);
    }
    for (int i = 0; i < model.rides().size(); i++) {
      SessionModel.Ride ride = model.rides().get(i);
      boolean here = i == newlyChosen;
      put(2 * i, new ChainLink.Face(ride, low), i);
      put(2 * i + 1, new MotoCard.Face(ride, here, here && entering, low), i);
    }
    chosen = newlyChosen;
    toTheChosen();
  }

  private void put(int at, ChainLink.Face face, int place) {
    if (at >= row.getChildren().size()) {
      row.getChildren().add(new ChainLink(desk, face, () -> chooseLink.accept(place)));
    } else if (!((ChainLink) row.getChildren().get(at)).face().equals(face)) {
      replace(at, new ChainLink(desk, face, () -> chooseLink.accept(place)));
    }
  }

  private void put(int at, MotoCard.Face face, int place) {
    if (at >= row.getChildren().size()) {
      row.getChildren().add(new MotoCard(desk, face, () -> chooseMoto.accept(place)));
    } else if (!((MotoCard) row.getChildren().get(at)).face().equals(face)) {
      replace(at, new MotoCard(desk, face, () -> chooseMoto.accept(place)));
    }
  }

  /** Keeps the focus where it was. */
  private void replace(int at, Node next) {
    Node before = row.getChildren().get(at);
    boolean focused = before.isFocused();
    if (focused) {
      requestFocus();
    }
    row.getChildren().set(at, next);
    if (focused) {
      next.requestFocus();
    }
  }

  private void showStart(SessionModel model, boolean isChosen) {
    String state =
        model.first()
            ? desk.text("link.start.first")
            : model.breaks().isEmpty()
                ? desk.text("link.start.asleft")
                : desk.text("link.start.breaks", model.breaks().size());
    VBox text =
        new VBox(
            2,
            Keys.label(desk.text("link.start"), "strong"),
            Keys.prose(state, model.breaks().isEmpty() ? "soft" : "due", "condensed"));
    text.getStyleClass().add("chain-start-text");
    start.setGraphic(text);
    start.getStyleClass().remove("chosen");
    if (isChosen) {
      start.getStyleClass().add("chosen");
    }
    start.setAccessibleText(desk.text("link.start") + ", " + state);
  }

  /**
   * Scrolls as little as brings the chosen moto into sight, and so that no card and no link is cut
   * at the left.
   */
  private void toTheChosen() {
    double view = scroll.getViewportBounds().getWidth();
    double content = last().map(card -> card.getBoundsInParent().getMaxX()).orElse(0.0);
    double beyond = content - view;
    if (beyond <= 0 || view <= 0 || chosen < 0 || row.getChildren().size() < 2 * chosen + 2) {
      scroll.setHvalue(0);
      return;
    }
    double right = row.getChildren().get(2 * chosen + 1).getBoundsInParent().getMaxX();
    double offset = 0;
    for (int i = 1; i <= 2 * chosen && right - offset > view; i++) {
      offset = row.getChildren().get(i).getBoundsInParent().getMinX() - (i % 2 == 0 ? 0 : FADE);
    }
    endsAfter(Math.max(0, offset - beyond));
    scroll.setHvalue(Math.min(1, offset / Math.max(beyond, offset)));
  }

  /** Room behind the last moto, so that what is cut at the left can be moved out of sight. */
  private void endsAfter(double room) {
    Node card = last().orElseThrow();
    double now = Optional.ofNullable(HBox.getMargin(card)).map(Insets::getRight).orElse(0.0);
    if (now != room) {
      HBox.setMargin(card, new Insets(0, room, 0, 0));
    }
  }

  private Optional<Node> last() {
    int cards = row.getChildren().size();
    return cards == 0 ? Optional.empty() : Optional.of(row.getChildren().get(cards - 1));
  }

  /** The bar of the chain between two cards. */
  static Region bar() {
    Region bar = new Region();
    bar.getStyleClass().add("chain-bar");
    return bar;
  }
}
