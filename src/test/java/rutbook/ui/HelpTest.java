package rutbook.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Constructor;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Notebook;
import rutbook.units.Display;
import rutbook.words.HelpWords;
import rutbook.words.Language;
import rutbook.words.Phrases;

/** Each place has its help, which opens over it and closes again. */
class HelpTest extends WindowTest {
  @Override
  protected Optional<Notebook> notebook() {
    return Optional.of(EveryPlace.NOTEBOOK);
  }

  /** Places hold ids or nothing, which help does not look at. */
  private static Place any(Class<?> kind) throws ReflectiveOperationException {
    Constructor<?> made = kind.getDeclaredConstructors()[0];
    made.setAccessible(true);
    return (Place) made.newInstance(new Object[made.getParameterCount()]);
  }

  @Test
  void everyPlaceHasHelpInEveryLanguage() throws ReflectiveOperationException {
    List<String> without = new ArrayList<>();
    for (Class<?> kind : Place.class.getPermittedSubclasses()) {
      if (kind == Place.Help.class || kind == Place.Shortcuts.class) {
        continue;
      }
      String page = Pages.helpName(any(kind));
      for (Language language : Language.values()) {
        HelpWords words =
            new HelpWords(new Phrases(Locale.forLanguageTag(language.tag()), Display.METRIC));
        if (page.isEmpty()
            || words.purpose(page).isBlank()
            || words.how(page).size() < 2
            || words.limits(page).isBlank()) {
          without.add(kind.getSimpleName() + " in " + language);
        }
      }
    }
    assertThat(without).isEmpty();
  }

  static List<String> places() {
    return List.copyOf(EveryPlace.all().keySet());
  }

  @Test
  void theKeyAndF1OpenItAndItsKeysLeadToTheSheetOfKeys() {
    go(new Place.Next());
    touch("help");
    assertThat(text("help-title")).startsWith("Next change");
    touch("overlay-close");
    interact(
        () ->
            scene()
                .getAccelerators()
                .get(new javafx.scene.input.KeyCodeCombination(KeyCode.F1))
                .run());
    settle();
    assertThat(text("help-title")).startsWith("Next change");
    touch("help-keys");
    assertThat(scene().lookup("#shortcut-sheet")).isNotNull();
  }

  @Test
  void itOpensAtTheRightPlaceWithNothingCutInASmallWindowAndEscapeClosesIt() {
    HelpWords words = new HelpWords(Phrases.english(Display.METRIC));
    interact(
        () -> {
          stage.setWidth(1024);
          stage.setHeight(640);
        });
    for (String name : places()) {
      Place place = EveryPlace.all().get(name);
      go(place);
      go(new Place.Help());
      assertThat(text("help-title")).as(name).isEqualTo(words.title(Pages.helpName(place)));
      for (String id : List.of("help-title", "help-keys", "overlay-close")) {
        assertThat(isInSight(id)).as("%s of the help on %s", id, name).isTrue();
      }
      ScrollPane text = (ScrollPane) node("help-text");
      for (Node label : text.getContent().lookupAll(".label")) {
        Labeled shown = (Labeled) label;
        assertThat(shown.getWidth())
            .as("“%s” on %s", shown.getText(), name)
            .isLessThanOrEqualTo(text.getViewportBounds().getWidth() + 0.5);
      }
      press(node("overlay-close"), KeyCode.ESCAPE);
      assertThat(scene().lookup("#help-sheet")).as(name).isNull();
    }
  }
}
