package rutbook.report;

import java.util.List;
import java.util.Locale;
import rutbook.report.Card.Block;

/**
 * How tight the rows of a page stand: the roomiest at which a card stays on one sheet of A4 or
 * Letter. Heights are those of the style sheet, in CSS pixels.
 */
enum Density {
  ROOMY(44, 19, 1000),
  SNUG(36, 19, 950),
  TIGHT(34, 16, 1095),
  /** As tight, with small rulers. */
  DENSE(28, 16, 1150);

  private static final int TITLE = 32;
  private static final int LETTERS = 105;
  private static final int CELL_LETTERS = 36;
  private static final int SMALL_LETTERS = 120;
  private static final int NOTE_LETTERS = 24;
  private static final int TODO_LETTERS = 16;
  private static final int SMALL_LINE = 14;

  private final int row;
  private final int line;

  /**
   * What a sheet of Letter, the shorter paper, holds of heights as they are reckoned here: they are
   * on the safe side, and the tighter ones are printed smaller.
   */
  private final int page;

  Density(int row, int line, int page) {
    this.row = row;
    this.line = line;
    this.page = page;
  }

  static Density of(Card card) {
    for (Density density : values()) {
      if (density.height(card) <= density.page) {
        return density;
      }
    }
    return DENSE;
  }

  /** Whether the card stays on one sheet at all. */
  static boolean fits(Card card) {
    return DENSE.height(card) <= DENSE.page;
  }

  String style() {
    String name = name().toLowerCase(Locale.ROOT);
    return this == DENSE ? "tight " + name : name;
  }

  private int height(Card card) {
    int height = 50 + card.under().stream().mapToInt(text -> 20 * lines(text, LETTERS)).sum();
    for (Block block : card.blocks()) {
      height += (block.title().isEmpty() ? 0 : TITLE) + height(block);
    }
    return height + (card.cautions().isEmpty() ? 0 : 24 + 16 * ((card.cautions().size() + 1) / 2));
  }

  private int height(Block block) {
    if (block instanceof Card.Rulers rulers) {
      return rulers.list().stream().mapToInt(this::setting).sum();
    } else if (block instanceof Card.Lines lines) {
      return lines.list().stream().mapToInt(text -> lines(text, LETTERS) * line + 3).sum();
    } else if (block instanceof Card.Pieces pieces) {
      return lines(String.join("        ", pieces.list()), LETTERS) * line + 3;
    } else if (block instanceof Card.Table table) {
      return 38 + table.list().stream().mapToInt(this::cells).sum();
    } else if (block instanceof Card.Figure figure) {
      return (int) figure.picture().drawing().height() + 12 + figure.under().size() * (line + 3);
    } else if (block instanceof Card.Work work) {
      return work.list().stream().mapToInt(this::step).sum();
    }
    return 26;
  }

  private int setting(Card.Row setting) {
    int under =
        setting.effects().stream().mapToInt(text -> lines(text, SMALL_LETTERS) * (line - 3)).sum();
    int told = setting.todo().isEmpty() ? 0 : beside(setting) * SMALL_LINE + 3;
    return Math.max(row, told) + under + (under == 0 ? 0 : 5);
  }

  /** Lines beside the ruler: what to do, or else what is wrong and the limits. */
  private static int beside(Card.Row setting) {
    return Math.max(
        lines(setting.todo().text(), TODO_LETTERS),
        lines(setting.alarm() + setting.note(), NOTE_LETTERS));
  }

  /** A table's row is as high as its longest cell, which is given the most room. */
  private int cells(List<String> cells) {
    int longest = cells.stream().mapToInt(String::length).max().orElse(0);
    return (1 + longest / CELL_LETTERS) * (line - 2) + 7;
  }

  private int step(Card.Step step) {
    return 28 + (step.values().isEmpty() ? 0 : 17) + (step.cautions().isEmpty() ? 0 : 17);
  }

  private static int lines(String text, int letters) {
    return 1 + text.length() / letters;
  }
}
