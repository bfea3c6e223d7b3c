package rutbook.report;

import java.util.List;
import java.util.Optional;
import rutbook.drawing.Drawing;

/**
 * What a page for people holds, before it is HTML, PDF or plain text: all of it words and drawings,
 * nothing left to be worked out.
 *
 * @param under lines below the title: what it is of, the day, the ground
 * @param cautions what must be read before work begins
 */
public record Card(String title, List<String> under, List<Block> blocks, List<String> cautions) {
  public Card {
    under = List.copyOf(under);
    blocks = List.copyOf(blocks);
    cautions = List.copyOf(cautions);
  }

  /** A part of the page. */
  public sealed interface Block {
    /** Empty for none. */
    String title();
  }

  /** Settings, each with its number and its ruler. */
  public record Rulers(String title, List<Row> list) implements Block {
    public Rulers {
      list = List.copyOf(list);
    }
  }

  /**
   * One setting.
   *
   * @param aside small, beside the name, such as "each leg"; may be empty
   * @param reading the number to set, as large as it goes
   * @param other the same in the other system of units; may be empty
   * @param todo how to get there from what is on the bike now, where that is told
   * @param note limits, baseline, difference
   * @param alarm what is wrong with it; may be empty
   * @param effects sentences below it: what it does; may be empty
   */
  public record Row(
      String name,
      String aside,
      String reading,
      String other,
      Optional<Picture> ruler,
      Todo todo,
      String note,
      String alarm,
      List<String> effects) {
    public Row {
      effects = List.copyOf(effects);
    }
  }

  /**
   * How to get to a number from what is on the bike now.
   *
   * @param text may be empty
   * @param done it is there already
   */
  public record Todo(String text, boolean done) {
    static final Todo NONE = new Todo("", false);

    boolean isEmpty() {
      return text.isEmpty();
    }
  }

  /** A drawing and what it shows, in words. */
  public record Picture(Drawing drawing, String said) {}

  /** Sentences. */
  public record Lines(String title, List<String> list) implements Block {
    public Lines {
      list = List.copyOf(list);
    }
  }

  /** Short things one after the other, none broken over a line. */
  public record Pieces(String title, List<String> list) implements Block {
    public Pieces {
      list = List.copyOf(list);
    }
  }

  /** Columns under heads; the first column names its row. */
  public record Table(String title, List<String> head, List<List<String>> list) implements Block {
    public Table {
      head = List.copyOf(head);
      list = list.stream().map(List::copyOf).toList();
    }
  }

  /** A drawing across the page. */
  public record Figure(String title, Picture picture, List<String> under) implements Block {
    public Figure {
      under = List.copyOf(under);
    }
  }

  /** What the marks mean, on one line. */
  public record Legend(List<Picture> marks) implements Block {
    public Legend {
      marks = List.copyOf(marks);
    }

    @Override
    public String title() {
      return "";
    }
  }

  /** Work in order, each with boxes to write in or to tick. */
  public record Work(String title, List<Step> list) implements Block {
    public Work {
      list = List.copyOf(list);
    }
  }

  /**
   * One thing to do.
   *
   * @param boxes what is written into each box; an empty name is a box to tick
   * @param done what was entered and when, in place of the boxes; empty where it is still to do
   */
  public record Step(
      int number,
      String what,
      List<String> values,
      List<String> cautions,
      List<String> boxes,
      String done) {
    public Step {
      values = List.copyOf(values);
      cautions = List.copyOf(cautions);
      boxes = List.copyOf(boxes);
    }
  }
}
