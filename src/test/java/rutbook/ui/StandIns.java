package rutbook.ui;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import rutbook.edit.Editor;
import rutbook.json.RulesJson;
import rutbook.notebook.EntryId;
import rutbook.notebook.Notebook;
import rutbook.ui.fx.Background;
import rutbook.words.Language;

/** What stands behind the window in tests and pictures: no disk, no memory, everything at once. */
final class StandIns {
  private StandIns() {}

  static WindowServices services(Editor editor, LocalDate today) {
    return services(editor, today, WindowMemory.Look.FIRST);
  }

  static WindowServices services(Editor editor, LocalDate today, WindowMemory.Look look) {
    return services(editor, today, look, new InMemory());
  }

  static WindowServices services(
      Editor editor, LocalDate today, WindowMemory.Look look, InMemory outside) {
    AtomicInteger ids = new AtomicInteger();
    return new WindowServices(
        editor,
        () -> unused(editor, ids),
        Clock.fixed(today.atTime(LocalTime.NOON).toInstant(ZoneOffset.UTC), ZoneOffset.UTC),
        look.language().map(Language::locale).orElse(Locale.UK),
        RulesJson::ofTheTrade,
        new NoFiles(),
        new NoPaper(),
        new AlwaysSaved(),
        new KeepsNoLook(look),
        Background.atOnce(),
        outside,
        outside);
  }

  /** A window opened again on the same notebook does not begin at one again. */
  private static String unused(Editor editor, AtomicInteger ids) {
    String id = "new-" + ids.incrementAndGet();
    return editor.present().entry(new EntryId(id)).isPresent() ? unused(editor, ids) : id;
  }

  static class NoFiles implements NotebookFiles {
    @Override
    public Optional<Path> current() {
      return Optional.empty();
    }

    @Override
    public boolean isThere(Path path) {
      return false;
    }

    @Override
    public Optional<Path> folder() {
      return Optional.empty();
    }

    @Override
    public List<Path> recent() {
      return List.of();
    }

    @Override
    public boolean isSample() {
      return false;
    }

    @Override
    public List<Answer> atStart() {
      return List.of();
    }

    @Override
    public void open(Path path, Consumer<Answer> answer) {}

    @Override
    public void startNew(Path path, Consumer<Answer> answer) {}

    @Override
    public void copyTo(Path path, Consumer<Answer> answer) {}

    @Override
    public void settle(Consumer<Answer> answer) {}

    @Override
    public void beforeClosing(Consumer<Optional<String>> answer) {
      answer.accept(Optional.empty());
    }
  }

  /** Says of every sheet that it lies there. */
  static final class NoPaper implements Printing {
    @Override
    public void print(Notebook notebook, Sheet sheet, Form form, Consumer<Printed> answer) {
      String kind = sheet instanceof Sheet.Work ? "work-sheet" : "shop-sheet";
      answer.accept(new Printed.Kept(Path.of(kind + "." + form.name().toLowerCase(Locale.ROOT))));
    }
  }

  static final class AlwaysSaved implements SaveLight {
    @Override
    public State now() {
      return new State.Saved(LocalTime.NOON);
    }

    @Override
    public Runnable listen(Consumer<State> listener) {
      return () -> {};
    }
  }

  /** A look to begin with; what is remembered is forgotten. */
  record KeepsNoLook(Look remembered) implements WindowMemory {

    @Override
    public void remember(Look look) {}
  }
}
