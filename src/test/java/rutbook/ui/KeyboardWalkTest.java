package rutbook.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import javafx.css.PseudoClass;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rutbook.notebook.Notebook;

/**
 * Every page by keyboard alone: Tab reaches whatever can be used, in reading order and without a
 * trap, the focus can be seen, and a screen reader has a name for it.
 */
class KeyboardWalkTest extends WindowTest {
  private static final int MOST_STEPS = 600;
  private static final PseudoClass FOCUS_VISIBLE = PseudoClass.getPseudoClass("focus-visible");

  @Override
  protected Optional<Notebook> notebook() {
    return Optional.of(EveryPlace.NOTEBOOK);
  }

  static List<String> places() {
    return Stream.concat(EveryPlace.all().keySet().stream(), EveryPlace.read().keySet().stream())
        .toList();
  }

  /** Where Tab leads, from the first stop round to it again. */
  private List<Node> walk() {
    List<Node> stops = new ArrayList<>();
    interact(
        () -> {
          Set<Node> seen = new LinkedHashSet<>();
          Node now = scene().getFocusOwner();
          for (int step = 0; step < MOST_STEPS && seen.add(now); step++) {
            stops.add(now);
            now.fireEvent(
                new KeyEvent(
                    KeyEvent.KEY_PRESSED, "\t", "", KeyCode.TAB, false, false, false, false));
            Node next = scene().getFocusOwner();
            assertThat(next).as("the focus after %s", Named.called(now)).isNotNull();
            assertThat(next).as("Tab does not leave %s", Named.called(now)).isNotSameAs(now);
            now = next;
          }
          assertThat(stops.size()).as("Tab never comes round").isLessThan(MOST_STEPS);
        });
    return stops;
  }

  private List<Node> everything() {
    return Named.everything(scene().getRoot());
  }

  /** Keys in a row are one stop; the arrows lead along it. */
  private static boolean isBesideAStop(Node key, List<Node> stops) {
    return key.getParent().getChildrenUnmodifiable().stream().anyMatch(stops::contains);
  }

  @ParameterizedTest
  @MethodSource("places")
  void everyPageIsUsedByKeyboardAlone(String place) {
    go(EveryPlace.all().getOrDefault(place, EveryPlace.read().get(place)));
    List<Node> stops = walk();
    tabReachesWhateverCanBeUsed(place, stops);
    theOrderIsThatOfReading(place, stops);
    theFocusCanBeSeen(place, stops);
    aScreenReaderHasANameForWhateverCanBeUsed(place);
  }

  private void tabReachesWhateverCanBeUsed(String place, List<Node> stops) {
    for (Node node : everything()) {
      if (node.isFocusTraversable()) {
        assertThat(stops.contains(node))
            .as("Tab reaches %s on %s", Named.called(node), place)
            .isTrue();
      } else if (node instanceof ButtonBase && node.getStyleClass().contains("key")) {
        assertThat(isBesideAStop(node, stops))
            .as("the arrows reach %s on %s", Named.called(node), place)
            .isTrue();
      }
    }
  }

  private void theOrderIsThatOfReading(String place, List<Node> stops) {
    Node root = scene().getRoot();
    int start = first(stops);
    for (int i = start; i + 1 < start + stops.size(); i++) {
      Node one = stops.get(i % stops.size());
      Node other = stops.get((i + 1) % stops.size());
      Parent both = one.getParent();
      while (both != root && !isWithin(other, both)) {
        both = both.getParent();
      }
      Bounds a = below(both, one).getBoundsInParent();
      Bounds b = below(both, other).getBoundsInParent();
      boolean above = b.getMaxY() <= a.getMinY() + 1;
      boolean before = b.getMaxX() <= a.getMinX() + 1 && b.getMinY() < a.getMaxY() - 1;
      assertThat(above || before && !(b.getMinY() > a.getMinY() + 1))
          .as("Tab goes back from %s to %s on %s", Named.called(one), Named.called(other), place)
          .isFalse();
    }
  }

  /** The stop at which the walk round begins: the first of the window. */
  private int first(List<Node> stops) {
    List<Node> all = everything();
    int first = 0;
    for (int i = 1; i < stops.size(); i++) {
      if (all.indexOf(stops.get(i)) < all.indexOf(stops.get(first))) {
        first = i;
      }
    }
    return first;
  }

  private static boolean isWithin(Node node, Parent above) {
    Node at = node;
    while (at != null && at != above) {
      at = at.getParent();
    }
    return at == above;
  }

  private static Node below(Parent above, Node node) {
    Node at = node;
    while (at.getParent() != above) {
      at = at.getParent();
    }
    return at;
  }

  private void theFocusCanBeSeen(String place, List<Node> stops) {
    interact(
        () -> {
          for (Node stop : stops) {
            if (!stop.isFocusTraversable()) {
              continue;
            }
            scene().getRoot().requestFocus();
            List<Object> without = look(stop);
            stop.requestFocus();
            stop.pseudoClassStateChanged(FOCUS_VISIBLE, true);
            assertThat(look(stop))
                .as("focus shows on %s on %s", Named.called(stop), place)
                .isNotEqualTo(without);
            stop.pseudoClassStateChanged(FOCUS_VISIBLE, false);
          }
        });
  }

  /** How a node and what it stands in are drawn. */
  private static List<Object> look(Node node) {
    List<Object> look = new ArrayList<>();
    Node box = node.lookup(".box");
    if (box instanceof Region ticked) {
      ticked.applyCss();
      look.add(Optional.ofNullable(ticked.getBorder()));
      look.add(Optional.ofNullable(ticked.getBackground()));
    }
    Node at = node;
    for (int above = 0; above < 2 && at instanceof Region region; above++) {
      region.applyCss();
      look.add(Optional.ofNullable(region.getBorder()));
      look.add(Optional.ofNullable(region.getBackground()));
      look.add(Optional.ofNullable(region.getEffect()));
      at = at.getParent();
    }
    return look;
  }

  private void aScreenReaderHasANameForWhateverCanBeUsed(String place) {
    assertThat(Named.without(scene().getRoot())).as("without a name on %s", place).isEmpty();
  }

  @Test
  void spaceAndEnterBothTouchAKey() {
    go(new Place.Next());
    ToggleButton known = (ToggleButton) node("next-known");
    interact(known::requestFocus);
    press(known, KeyCode.ENTER);
    assertThat(scene().lookup("#ledger")).as("Enter").isNotNull();
    press(known, KeyCode.SPACE);
    assertThat(scene().lookup("#ledger")).as("Space").isNull();
  }

  @Test
  void escapeClosesWhatIsOpen() {
    touch("log-new");
    press(node("new-day"), KeyCode.ESCAPE);
    assertThat(scene().lookup("#new-session")).isNull();
    go(new Place.Help());
    press(node("overlay-close"), KeyCode.ESCAPE);
    assertThat(scene().lookup("#help-sheet")).isNull();
  }
}
