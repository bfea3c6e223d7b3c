package rutbook.ui.log;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import rutbook.edit.SessionEdit;
import rutbook.notebook.EntryId;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoId;
import rutbook.notebook.MotoKind;
import rutbook.notebook.Notebook;
import rutbook.notebook.Report;
import rutbook.notebook.SettingId;
import rutbook.ui.Desk;
import rutbook.ui.Page;
import rutbook.ui.Place;
import rutbook.ui.RiddenBox;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.OneStop;
import rutbook.ui.controls.Scrolling;
import rutbook.ui.log.SessionSides.Side;

/** One session: its chain of motos, and below it one side of the chosen moto at a time. */
public final class SessionPage extends Page {
  /** A page lower than this shows less of each moto, so that the entry below keeps its room. */
  private static final double LOW_EM = 45;

  private final EntryId id;
  private final SessionHead head;
  private final HBox tabs = new HBox(6);
  private final Map<Side, ToggleButton> tabKeys = new EnumMap<>(Side.class);
  private final Chain chain;
  private final VBox below = new VBox(10);
  private final ScrollPane scroll = Scrolling.of(below);
  private final Label heading = Keys.label("", "card-title");
  private final SessionSides sides;
  private final RiddenBox ridden;
  private SessionModel model;
  private Optional<MotoId> chosen = Optional.empty();
  private Optional<SettingId> wanted = Optional.empty();
  private Side side = Side.FEEL;
  private boolean low;

  public SessionPage(Desk desk, EntryId id) {
    super(desk);
    this.id = id;
    setId("session-page");
    chain = new Chain(desk, this::chooseMoto, this::chooseLink);
    sides = new SessionSides(desk, id);
    ridden = new RiddenBox(desk, open -> open.session().id().equals(id), false);
    head = new SessionHead(desk, () -> open(Side.CHECK), this::newThing);
    getChildren().addAll(head, chain, tabs(), below());
  }

  /** Opens at what was changed, with the focus on a setting. */
  public SessionPage atSetting(SettingId setting) {
    side = Side.CHANGES;
    wanted = Optional.of(setting);
    return this;
  }

  private Node tabs() {
    for (Side each : Side.values()) {
      ToggleButton key =
          Keys.choice(each.key().replace('.', '-'), desk().text(each.key()), () -> open(each));
      key.getStyleClass().add("small");
      tabKeys.put(each, key);
      if (each != Side.START && each != Side.CHECK) {
        tabs.getChildren().add(key);
      }
    }
    OneStop.of(tabs);
    return tabs;
  }

  private Node below() {
    below.getStyleClass().add("wash");
    scroll
        .viewportBoundsProperty()
        .addListener((bounds, before, now) -> below.setMinHeight(now.getHeight()));
    VBox.setVgrow(scroll, Priority.ALWAYS);
    return scroll;
  }

  /** How low the page is decides how much of the chain is shown and where the entry folds. */
  @Override
  protected void layoutChildren() {
    boolean nowLow = getHeight() < LOW_EM * desk().em();
    if (nowLow != low) {
      low = nowLow;
      pseudoClassStateChanged(javafx.css.PseudoClass.getPseudoClass("low"), low);
      heading.setManaged(!low);
      heading.setVisible(!low);
      if (model != null) {
        redraw();
      }
    }
    super.layoutChildren();
    double above = taken(heading) + taken(ridden);
    double around = below.getInsets().getTop() + below.getInsets().getBottom();
    sides.room(scroll.getHeight() - above - around);
  }

  private double taken(Region above) {
    boolean stands = above.isManaged() && below.getChildren().contains(above);
    return stands ? above.getHeight() + below.getSpacing() : 0;
  }

  private void open(Side next) {
    side = next;
    redraw();
  }

  private void chooseMoto(int place) {
    if (place < 0) {
      open(Side.START);
      return;
    }
    chosen = Optional.of(model.rides().get(place).moto().id());
    open(side == Side.START || side == Side.CHECK ? Side.FEEL : side);
  }

  private void chooseLink(int place) {
    chosen = Optional.of(model.rides().get(place).moto().id());
    open(Side.CHANGES);
  }

  @Override
  protected void show(Notebook notebook) {
    Optional<SessionModel> now = SessionModel.of(notebook, desk()::timeline, id);
    if (now.isEmpty()) {
      getChildren()
          .setAll(
              Keys.prose(desk().text("session.gone"), "card-title"),
              Keys.key(
                  "session-gone", desk().text("session.back"), () -> desk().go(new Place.Log())));
      return;
    }
    model = now.get();
    if (ride().isEmpty()) {
      chosen =
          model.rides().isEmpty()
              ? Optional.empty()
              : Optional.of(model.rides().get(model.rides().size() - 1).moto().id());
    }
    redraw();
  }

  private Optional<SessionModel.Ride> ride() {
    return model.rides().stream()
        .filter(each -> chosen.equals(Optional.of(each.moto().id())))
        .findFirst();
  }

  private void redraw() {
    head.show(model);
    Side shown = ride().isEmpty() && !side.isOfTheDay() ? Side.START : side;
    int place = shown == Side.START ? -1 : ride().map(each -> each.number() - 1).orElse(-1);
    chain.show(model, place, shown == Side.FEEL, low);
    tabKeys.forEach((each, key) -> key.setSelected(each == shown));
    heading.setText(heading(shown));
    Node content = sides.show(shown, model, ride());
    boolean asks = shown == Side.FEEL && place == model.rides().size() - 1;
    List<Node> wantedNodes = asks ? List.of(heading, ridden, content) : List.of(heading, content);
    if (asks) {
      ridden.foldUnlessSaid(ride().orElseThrow().moto(), low);
      ridden.show(model.bike().id());
    }
    if (!below.getChildren().equals(wantedNodes)) {
      below.getChildren().setAll(wantedNodes);
      scroll.setVvalue(0);
    }
    wanted.ifPresent(sides::focus);
    wanted = Optional.empty();
  }

  private String heading(Side shown) {
    Optional<SessionModel.Ride> ride = ride();
    if (shown == Side.FEEL && ride.isPresent()) {
      return desk()
          .text(
              "feel.question", desk().words().label(ride.get().moto().kind()), ride.get().number());
    }
    return desk().text(shown.key());
  }

  /** Adds a moto and opens its feel: what was changed before it is entered on its link. */
  @Override
  protected void newThing() {
    MotoId moto = new MotoId(desk().ids().next());
    Moto next = new Moto(moto, MotoKind.MOTO, List.of(), Report.EMPTY, Optional.empty(), "");
    desk().make(new SessionEdit.AddMoto(id, next));
    chosen = Optional.of(moto);
    open(Side.FEEL);
    sides.focusFeel();
  }
}
