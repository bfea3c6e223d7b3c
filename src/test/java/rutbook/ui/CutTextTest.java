package rutbook.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.testfx.framework.junit5.ApplicationTest;
import org.testfx.util.WaitForAsyncUtils;
import rutbook.ui.fx.DrawingView;
import rutbook.words.Language;

/**
 * In a small window no page shows a text that had to be cut, in any language, and whatever can be
 * used there has a name for a screen reader.
 */
class CutTextTest extends ApplicationTest {
  /**
   * What a rider typed may be longer than any place for it, and a side of a comparison has a
   * track's name in it.
   */
  private static final List<String> MAY_BE_CUT = List.of("typed", "side");

  private static final String SIZE = "rutbook.test.size";

  @ParameterizedTest
  @EnumSource(Language.class)
  void noTextIsCutAndNothingIsWithoutANameOnAnyPage(Language language) {
    List<String> cut = new ArrayList<>();
    List<String> drawn = new ArrayList<>();
    List<String> unnamed = new ArrayList<>();
    for (Pictures.View view : views(language)) {
      Pictures.Take take = new Pictures.Take(1024, 640, Theme.LIGHT, TextSize.NORMAL).in(language);
      Stage stage = Pictures.open(view, take);
      WaitForAsyncUtils.waitForAsyncFx(
          60_000,
          () -> {
            collect(view.name(), stage.getScene().getRoot(), cut);
            drawn(stage.getScene().getRoot(), drawn);
            Named.without(stage.getScene().getRoot())
                .forEach(each -> unnamed.add(view.name() + ": " + each));
            stage.hide();
          });
    }
    assertThat(cut.stream().distinct()).as("cut").isEmpty();
    assertThat(unnamed.stream().distinct()).as("without a name").isEmpty();
    boolean comma = language == Language.GERMAN;
    assertThat(drawn).as("numbers on drawings").anyMatch(text -> text.matches("\\d+[.,]\\d+"));
    assertThat(drawn).noneMatch(text -> text.matches(comma ? ".*\\d\\.\\d+" : ".*\\d,\\d+"));
  }

  /** All of them; in a short run each fourth one in English, whose texts are the shorter ones. */
  private static List<Pictures.View> views(Language language) {
    List<Pictures.View> all = Pictures.views();
    boolean every = language != Language.ENGLISH || "long".equals(System.getProperty(SIZE));
    return IntStream.range(0, all.size())
        .filter(i -> every || i % 4 == 0)
        .mapToObj(all::get)
        .toList();
  }

  /** What stands on rulers and charts. */
  private static void drawn(Node node, List<String> texts) {
    if (node instanceof Text text && text.getParent() instanceof DrawingView) {
      texts.add(text.getText());
    }
    if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(child -> drawn(child, texts));
    }
  }

  @Test
  void aCutTextIsSeen() {
    List<String> cut = new ArrayList<>();
    WaitForAsyncUtils.waitForAsyncFx(
        60_000,
        () -> {
          javafx.scene.control.Label label = new javafx.scene.control.Label("A long sentence here");
          label.setId("narrow");
          label.setMaxWidth(50);
          TextField asked = new TextField();
          asked.setId("asked");
          asked.setPromptText("What is to be typed here");
          asked.setMaxWidth(60);
          ComboBox<String> list = new ComboBox<>();
          list.getItems().add("The first of many");
          list.setValue("The first of many");
          list.setMaxWidth(60);
          javafx.scene.layout.VBox box = new javafx.scene.layout.VBox(label, asked, list);
          new javafx.scene.Scene(box, 400, 100);
          box.applyCss();
          box.layout();
          collect("here", box, cut);
        });
    assertThat(cut)
        .containsExactly(
            "here: narrow “A long sentence here”",
            "here: asked “What is to be typed here”",
            "here: cell indexed-cell list-cell “The first of many”");
  }

  private static void collect(String view, Node node, List<String> cut) {
    if (!node.isVisible() || node.getStyleClass().stream().anyMatch(MAY_BE_CUT::contains)) {
      return;
    }
    if (node instanceof Labeled labeled && isCut(labeled)) {
      String name = labeled.getId() == null ? "" + labeled.getStyleClass() : labeled.getId();
      cut.add(view + ": " + name + " “" + labeled.getText() + "”");
    }
    if (node instanceof TextField field && isPromptCut(field)) {
      cut.add(view + ": " + field.getId() + " “" + field.getPromptText() + "”");
    }
    if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(child -> collect(view, child, cut));
    }
  }

  /** A prompt is clipped at the edge of its field, without an ellipsis. */
  private static boolean isPromptCut(TextField field) {
    if (!field.getText().isEmpty() || field.getPromptText() == null) {
      return false;
    }
    Text prompt = new Text(field.getPromptText());
    prompt.setFont(field.getFont());
    double room = field.getWidth() - field.snappedLeftInset() - field.snappedRightInset();
    return prompt.getLayoutBounds().getWidth() > room + 1;
  }

  private static boolean isCut(Labeled labeled) {
    String whole = labeled.getText();
    return whole != null
        && !whole.isBlank()
        && labeled.getChildrenUnmodifiable().stream()
            .filter(Text.class::isInstance)
            .map(child -> ((Text) child).getText())
            .anyMatch(
                shown ->
                    shown.isEmpty()
                        || shown.endsWith(labeled.getEllipsisString())
                            && !whole.endsWith(labeled.getEllipsisString()));
  }
}
