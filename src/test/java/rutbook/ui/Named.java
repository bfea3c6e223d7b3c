package rutbook.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextInputControl;

/** What can be used in a window, and whether a screen reader has a name for it. */
final class Named {
  private Named() {}

  /** Whatever is shown and not disabled; of lists and bars only themselves. */
  static List<Node> everything(Node root) {
    List<Node> all = new ArrayList<>();
    collect(root, all);
    return all.stream().filter(Named::isShown).toList();
  }

  private static void collect(Node node, List<Node> all) {
    if (node instanceof ScrollBar || node instanceof ListView) {
      if (node instanceof ListView) {
        all.add(node);
      }
      return;
    }
    all.add(node);
    if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(each -> collect(each, all));
    }
  }

  private static boolean isShown(Node node) {
    for (Node above = node; above != null; above = above.getParent()) {
      if (!above.isVisible()) {
        return false;
      }
    }
    return !node.isDisabled();
  }

  /** What can be used and has no name, as a person would call it. */
  static List<String> without(Node root) {
    List<Node> all = everything(root);
    List<Node> labelled =
        all.stream()
            .filter(Label.class::isInstance)
            .map(label -> ((Label) label).getLabelFor())
            .filter(Objects::nonNull)
            .toList();
    return all.stream()
        .filter(node -> isUsed(node) && !isNamed(node) && !labelled.contains(node))
        .map(Named::called)
        .toList();
  }

  private static boolean isUsed(Node node) {
    boolean key = node instanceof ButtonBase && node.getStyleClass().contains("key");
    return (node.isFocusTraversable() || key) && !(node instanceof ScrollPane);
  }

  private static boolean isNamed(Node node) {
    return !said(node.getAccessibleText()).isEmpty()
        || node instanceof Labeled labeled && isWords(labeled.getText())
        || node instanceof TextInputControl field && !said(field.getPromptText()).isEmpty();
  }

  static String called(Node node) {
    return node.getClass().getSimpleName() + " #" + node.getId() + " " + node.getAccessibleText();
  }

  private static String said(String text) {
    return text == null ? "" : text.strip();
  }

  /** A number or a sign alone is no name. */
  private static boolean isWords(String text) {
    return said(text).chars().anyMatch(Character::isLetter);
  }
}
