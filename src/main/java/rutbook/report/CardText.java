package rutbook.report;

import java.util.ArrayList;
import java.util.List;
import rutbook.report.Card.Block;
import rutbook.words.SafeText;

/**
 * A card as plain lines for a message: no columns, since nobody knows the letters it is read in.
 */
public final class CardText {
  private CardText() {}

  public static String of(Card card) {
    List<String> lines = new ArrayList<>();
    lines.add(card.title());
    lines.addAll(card.under());
    for (Block block : card.blocks()) {
      add(lines, block);
    }
    if (!card.cautions().isEmpty()) {
      lines.add("");
      card.cautions().forEach(caution -> lines.add("! " + caution));
    }
    StringBuilder text = new StringBuilder();
    lines.forEach(line -> text.append(SafeText.line(line).stripTrailing()).append('\n'));
    return text.toString();
  }

  private static void add(List<String> lines, Block block) {
    if (block instanceof Card.Legend) {
      return;
    }
    lines.add("");
    if (!block.title().isEmpty()) {
      lines.add(block.title());
    }
    if (block instanceof Card.Rulers rulers) {
      rulers.list().forEach(row -> addRow(lines, row));
    } else if (block instanceof Card.Lines sentences) {
      lines.addAll(sentences.list());
    } else if (block instanceof Card.Pieces pieces) {
      lines.addAll(pieces.list());
    } else if (block instanceof Card.Table table) {
      table.list().forEach(cells -> lines.add(cells(table.head(), cells)));
    } else if (block instanceof Card.Figure figure) {
      lines.add(figure.picture().said());
      lines.addAll(figure.under());
    } else if (block instanceof Card.Work work) {
      work.list().forEach(step -> addStep(lines, step));
    }
  }

  private static void addRow(List<String> lines, Card.Row row) {
    lines.add(row(row));
    row.effects().forEach(line -> lines.add("    " + line));
  }

  private static String row(Card.Row row) {
    StringBuilder line = new StringBuilder(row.name());
    bracket(line, row.aside());
    line.append(": ").append(row.reading());
    bracket(line, row.other());
    if (!row.todo().isEmpty()) {
      line.append(" – ").append(row.todo().text());
    }
    if (!row.alarm().isEmpty()) {
      line.append(" – ").append(row.alarm());
    }
    return line.toString();
  }

  private static void bracket(StringBuilder line, String text) {
    if (!text.isEmpty()) {
      line.append(" (").append(text).append(')');
    }
  }

  private static String cells(List<String> head, List<String> cells) {
    List<String> said = new ArrayList<>();
    for (int i = 1; i < cells.size(); i++) {
      if (!cells.get(i).isEmpty()) {
        said.add(head.get(i) + " " + cells.get(i));
      }
    }
    return cells.get(0) + ": " + String.join(", ", said);
  }

  private static void addStep(List<String> lines, Card.Step step) {
    lines.add((step.done().isEmpty() ? "[ ] " : "[x] ") + step.number() + ". " + step.what());
    if (!step.done().isEmpty()) {
      lines.add("    = " + step.done());
    }
    step.values().forEach(value -> lines.add("    " + value));
    step.cautions().forEach(caution -> lines.add("    ! " + caution));
  }
}
