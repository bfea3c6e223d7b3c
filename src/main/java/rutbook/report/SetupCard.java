package rutbook.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.compare.Choice;
import rutbook.compare.Group;
import rutbook.compare.Standing;
import rutbook.compare.Subject;
import rutbook.drawing.Drawing;
import rutbook.drawing.MarkGlyph;
import rutbook.drawing.Ruler;
import rutbook.drawing.RulerDrawing;
import rutbook.notebook.Entry;
import rutbook.notebook.Feel;
import rutbook.notebook.Placed;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.words.TodoWords;

/** The card of one setup: enough to set the bike by. */
final class SetupCard {
  private final CardOf of;

  SetupCard(CardOf of) {
    this.of = of;
  }

  Card card(Subject subject) {
    List<Card.Block> blocks = new ArrayList<>();
    boolean now = subject.choice() instanceof Choice.Now;
    blocks.add(
        of.legend(
            of.words().say(now ? "mark.READING.now" : "mark.READING"),
            MarkGlyph.BASELINE,
            MarkGlyph.NEAR_STOP));
    blocks.addAll(settings(subject, Optional.empty()));
    List<String> sag = new ArrayList<>(of.sag(subject));
    of.words().sagDecides(subject.sheet()).ifPresent(sag::add);
    blocks.add(new Card.Lines(of.words().say("sag"), sag));
    blocks.add(new Card.Lines(of.words().say("how"), of.words().howToCount(subject.sheet())));
    feel(subject).ifPresent(blocks::add);
    return new Card(of.bike(), under(subject), blocks, of.cautions(subject.sheet()));
  }

  private List<String> under(Subject subject) {
    List<String> lines = new ArrayList<>();
    lines.add(
        subject.choice() instanceof Choice.Now
            ? of.words().say("now", subject.day())
            : of.words().say("set", of.subject(subject)));
    if (!(subject.choice() instanceof Choice.Now)) {
      lines.add(of.words().say("from-now", Subject.now(of.timeline()).day()));
    }
    lines.add(
        session(subject.choice())
            .flatMap(of::rider)
            .map(rider -> rider + " · " + sheet(subject.sheet()))
            .orElseGet(() -> sheet(subject.sheet())));
    return lines;
  }

  private String sheet(Sheet sheet) {
    return of.words().say("sheet", sheet.from());
  }

  private static Optional<Entry.Session> session(Choice choice) {
    if (choice instanceof Choice.OfSession it) {
      return Optional.of(it.session());
    } else if (choice instanceof Choice.OfMoto it) {
      return Optional.of(it.session());
    } else if (choice instanceof Choice.BestOf it) {
      return Optional.of(it.session());
    }
    return Optional.empty();
  }

  /**
   * The settings by group, each on its ruler.
   *
   * @param before what the bike started with, marked where it was another reading
   */
  List<Card.Block> settings(Subject subject, Optional<Setup> before) {
    List<Card.Block> blocks = new ArrayList<>();
    for (Group group : Group.values()) {
      List<Card.Row> rows = new ArrayList<>();
      for (Setting setting : subject.sheet().settings()) {
        Optional<Placed> placed = subject.setup().placed(setting.id());
        if (Group.of(setting.role()) == group && placed.isPresent()) {
          rows.add(row(subject, setting, placed.get(), before));
        }
      }
      if (!rows.isEmpty()) {
        blocks.add(new Card.Rulers(of.group(group), rows));
      }
    }
    return blocks;
  }

  private Card.Row row(Subject subject, Setting setting, Placed placed, Optional<Setup> before) {
    Sheet sheet = subject.sheet();
    Standing standing = Standing.of(sheet, setting, placed);
    Optional<Reading> baseline =
        of.timeline()
            .baselineOn(subject.day())
            .flatMap(entry -> entry.setup().reading(setting.id()));
    String reading = of.words().reading(setting, placed.reading());
    Ruler ruler = Ruler.of(sheet, setting, placed.reading()).in(of.phrases().display());
    ruler = baseline.isPresent() ? ruler.withBaseline(baseline.get()) : ruler;
    Optional<Reading> started = before.flatMap(setup -> setup.reading(setting.id()));
    ruler = started.isPresent() ? ruler.withPrevious(started.get()) : ruler;
    Drawing drawing = RulerDrawing.of(ruler, of.ruler());
    Card.Todo todo = before.isEmpty() ? todo(subject, setting, placed.reading()) : Card.Todo.NONE;
    String name = of.comparing().setting(setting);
    return new Card.Row(
        name,
        of.words().legs(setting),
        reading,
        of.words().beside(setting, placed.reading()),
        Optional.of(CardOf.picture(drawing, name + ": " + reading)),
        todo,
        of.words().note(sheet, setting, standing, todo.isEmpty() ? baseline : Optional.empty()),
        of.words().alarm(standing),
        List.of());
  }

  /** From what is on the bike now to this; nothing on the card of what is on it now. */
  private Card.Todo todo(Subject subject, Setting setting, Reading wanted) {
    if (subject.choice() instanceof Choice.Now) {
      return Card.Todo.NONE;
    }
    Optional<Reading> now = of.now(setting);
    String text = new TodoWords(of.phrases()).todo(setting, now, wanted);
    return new Card.Todo(text, TodoWords.isDone(now, wanted));
  }

  /** What was felt on it, worst first; empty when nothing was. */
  private Optional<Card.Block> feel(Subject subject) {
    List<String> said =
        subject.feel().stream()
            .filter(feel -> feel.severity() > 0)
            .sorted(java.util.Comparator.comparingInt(Feel::severity).reversed())
            .map(
                feel ->
                    of.words().say("feel.item", of.comparing().feel(feel.key()), feel.severity()))
            .toList();
    return said.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Card.Lines(
                of.words().say("feel"), List.of(of.phrases().sentence(String.join("; ", said)))));
  }
}
