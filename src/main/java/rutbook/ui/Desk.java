package rutbook.ui;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import rutbook.edit.Edit;
import rutbook.edit.Editor;
import rutbook.edit.Ids;
import rutbook.edit.SessionStart;
import rutbook.imports.CsvText;
import rutbook.imports.Grid;
import rutbook.imports.ImportException;
import rutbook.notebook.Bike;
import rutbook.notebook.BikeId;
import rutbook.notebook.EntryId;
import rutbook.notebook.Head;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Timeline;
import rutbook.reasoning.RuleBook;
import rutbook.rebuild.Advisor;
import rutbook.rebuild.BenchAdvice;
import rutbook.ui.fx.Background;
import rutbook.words.ImportWords;
import rutbook.words.Phrases;
import rutbook.words.SettingWords;
import rutbook.words.WindowWords;

/** What every page works with: the notebook's editor, the chosen bike, words, and ways onward. */
public final class Desk {
  private final WindowServices services;
  private final WindowWords words;
  private final SettingWords settingWords;
  private Phrases phrases;
  private final Consumer<Place> go;
  private final ReadOnlyObjectWrapper<Optional<BikeId>> bike =
      new ReadOnlyObjectWrapper<>(Optional.empty());

  private final Map<BikeId, Timeline> timelines = new HashMap<>();
  private Notebook timelinesOf;
  private final Map<String, String> kept = new HashMap<>();
  private double em = 14;

  Desk(WindowServices services, Consumer<Place> go) {
    this.services = services;
    this.words = new WindowWords(services.locale());
    this.settingWords = new SettingWords(this::phrases);
    this.phrases = new Phrases(services.locale(), notebook().display());
    this.go = go;
  }

  /** The size of text in pixels, by which room is measured. */
  public double em() {
    return em;
  }

  void em(double pixels) {
    em = pixels;
  }

  public Editor editor() {
    return services.editor();
  }

  public Notebook notebook() {
    return services.editor().present();
  }

  /** The timeline of a bike in the present notebook, made once for all who ask. */
  public Timeline timeline(BikeId bike) {
    Notebook now = notebook();
    if (timelinesOf != now) {
      timelinesOf = now;
      timelines.clear();
    }
    return timelines.computeIfAbsent(bike, id -> Timeline.of(now, id));
  }

  public Ids ids() {
    return services.ids();
  }

  public LocalDate today() {
    return LocalDate.ofInstant(now(), zone());
  }

  public Instant now() {
    return services.clock().instant();
  }

  public ZoneId zone() {
    return services.clock().getZone();
  }

  public Background background() {
    return services.background();
  }

  /** Sheets on paper. */
  public Printing printing() {
    return services.printing();
  }

  /** Files that are no notebook of the window's own. */
  public OutsideFiles outside() {
    return services.outside();
  }

  /** Asks for names of files. */
  public FilePicker picker() {
    return services.picker();
  }

  /** Opens a setup file: what this notebook handed over is taken back, all else is a guest. */
  public void openSetup(Path path, Consumer<String> refused) {
    outside()
        .open(
            path,
            answer -> {
              if (answer instanceof OutsideFiles.Answer.Done<OutsideFiles.Opened> done) {
                boolean own = done.value().file().handOver().notebook().equals(notebook().id());
                go(own ? new Place.TakeBack(done.value()) : new Place.Guest(done.value()));
              } else if (answer instanceof OutsideFiles.Answer.Refused<OutsideFiles.Opened> no) {
                refused.accept(no.sentence());
              }
            });
  }

  /** Asks for a table and reads it, whatever is in it. */
  public void openTable(Consumer<Grid> read, Consumer<String> refused) {
    ImportWords said = new ImportWords(phrases());
    picker()
        .toOpen(FilePicker.Kind.TABLE)
        .ifPresent(
            path ->
                outside()
                    .table(
                        path,
                        CsvText.MOST_BYTES,
                        answer -> {
                          if (answer instanceof OutsideFiles.Answer.Refused<byte[]> no) {
                            refused.accept(no.sentence());
                          } else if (answer instanceof OutsideFiles.Answer.Done<byte[]> done) {
                            try {
                              read.accept(CsvText.read(done.value()));
                            } catch (ImportException noTable) {
                              refused.accept(said.sentence(noTable));
                            }
                          }
                        }));
  }

  public WindowWords words() {
    return words;
  }

  public SettingWords settingWords() {
    return settingWords;
  }

  /** What physics and the rider's own motos add to a plan. */
  public Advisor advisor(BikeId id) {
    return BenchAdvice.of(notebook(), timeline(id), rules());
  }

  /** The rules of the trade with the notebook's own changes to them. */
  public RuleBook rules() {
    return services.rules().get().with(notebook().ruleChanges());
  }

  /** The head of something written down today, after all else of that bike on this day. */
  public Head headToday(Bike of) {
    return Head.of(
        new EntryId(ids().next()), of.id(), today(), SessionStart.orderOn(notebook(), of, today()));
  }

  public String text(String key, Object... facts) {
    return words.text(key, facts);
  }

  /** The makers of sentences, in the rider's language and units. */
  public Phrases phrases() {
    if (!phrases.display().equals(notebook().display())) {
      phrases = phrases.in(notebook().display());
    }
    return phrases;
  }

  /** What a page kept under a name since the window was opened. */
  public Optional<String> kept(String name) {
    return Optional.ofNullable(kept.get(name));
  }

  /** Keeps a choice of a page, which is no part of the notebook, while the window is open. */
  public void keep(String name, String choice) {
    kept.put(name, choice);
  }

  /** Lets go of a choice. */
  public void forget(String name) {
    kept.remove(name);
  }

  public void go(Place place) {
    go.accept(place);
  }

  /** The bike that strip and pages are about: the chosen one, or else the first. */
  public Optional<Bike> bike() {
    return bike.get()
        .flatMap(notebook().shelf()::bike)
        .or(() -> notebook().bikes().stream().findFirst());
  }

  public void choose(BikeId id) {
    bike.set(Optional.of(id));
  }

  public ReadOnlyObjectProperty<Optional<BikeId>> chosenBike() {
    return bike.getReadOnlyProperty();
  }

  /** Makes an edit that may be refused; the fault then, and nothing is changed. */
  public Optional<NotebookException> make(Edit edit) {
    try {
      editor().make(edit);
      return Optional.empty();
    } catch (NotebookException refused) {
      return Optional.of(refused);
    }
  }
}
