package rutbook.edit;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import java.util.stream.Stream;
import rutbook.notebook.Bike;
import rutbook.notebook.BikeId;
import rutbook.notebook.Dice;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Feel;
import rutbook.notebook.HandOverId;
import rutbook.notebook.Head;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoId;
import rutbook.notebook.Notebook;
import rutbook.notebook.Notebooks;
import rutbook.notebook.Outcome;
import rutbook.notebook.Proposal;
import rutbook.notebook.ProposalId;
import rutbook.notebook.RandomEntries;
import rutbook.notebook.Setting;
import rutbook.notebook.Sheet;
import rutbook.notebook.Source;
import rutbook.notebook.StepDone;
import rutbook.notebook.StepId;
import rutbook.units.Display;

/**
 * Random edits of every kind that {@link Edit} permits, made from the components of its record: a
 * new kind is thrown without being listed here, and one with a component of a new type fails until
 * that type is thrown too.
 */
public final class RandomEdits {
  private final Dice dice;
  private final Notebook notebook;
  private final RandomEntries entries;
  private final Entry.Session session;
  private final Bike bike;
  private final Sheet sheet;
  private final Optional<Entry.RebuildJob> job;
  private final Optional<Entry.Advice> advice;
  private final Map<String, Supplier<?>> byType = new HashMap<>();

  /**
   * @param notebook with a session at least
   */
  public RandomEdits(Dice dice, Notebook notebook) {
    this.dice = dice;
    this.notebook = notebook;
    this.entries = new RandomEntries(dice, notebook.shelf());
    this.session = Notebooks.anEntry(notebook, dice, Entry.Session.class).orElseThrow();
    this.bike = notebook.shelf().bike(session.bike()).orElseThrow();
    this.sheet = bike.sheetOn(session.day());
    this.job = Notebooks.anEntry(notebook, dice, Entry.RebuildJob.class);
    this.advice = Notebooks.anEntry(notebook, dice, Entry.Advice.class);
    throwIds();
    throwParts();
    throwShelf();
  }

  /** Every kind of edit, down to the records. */
  static Stream<Class<?>> kinds(Class<?> kind) {
    return kind.isRecord()
        ? Stream.of(kind)
        : Arrays.stream(kind.getPermittedSubclasses()).flatMap(RandomEdits::kinds);
  }

  public Edit any() {
    return of(dice.any(kinds(Edit.class).toList()));
  }

  /** An edit of a kind; whether the notebook takes it is another matter. */
  Edit of(Class<?> kind) {
    RecordComponent[] components = kind.getRecordComponents();
    Object[] values = new Object[components.length];
    Class<?>[] types = new Class<?>[components.length];
    for (int i = 0; i < components.length; i++) {
      types[i] = components[i].getType();
      values[i] = value(kind, components[i]);
    }
    try {
      Constructor<?> constructor = kind.getDeclaredConstructor(types);
      return (Edit) constructor.newInstance(values);
    } catch (ReflectiveOperationException wrong) {
      throw new AssertionError(kind + " from " + Arrays.toString(values), wrong);
    }
  }

  private Object value(Class<?> kind, RecordComponent component) {
    if (component.getType() == EntryId.class) {
      return entryNamed(component.getName());
    }
    if (component.getType() == Entry.class) {
      return kind == EntryEdit.Add.class ? added() : corrected();
    }
    String type = component.getGenericType().getTypeName();
    Supplier<?> thrown = byType.get(type.replaceAll("(java\\.util|rutbook\\.\\w+)\\.", ""));
    if (thrown == null) {
      throw new AssertionError("nobody throws a " + type + " for " + kind);
    }
    return thrown.get();
  }

  private EntryId entryNamed(String name) {
    return switch (name) {
      case "session" -> session.id();
      case "rebuild" -> job.map(Entry::id).orElse(session.id());
      case "advice" -> advice.map(Entry::id).orElse(session.id());
      default -> dice.any(notebook.entries()).id();
    };
  }

  private Entry added() {
    return entries.any(entries.head(bike), baseline());
  }

  private Entry.Baseline baseline() {
    return notebook.entries().stream()
        .filter(each -> each.bike().equals(bike.id()) && each instanceof Entry.Baseline)
        .map(Entry.Baseline.class::cast)
        .findFirst()
        .orElseGet(() -> entries.baseline(entries.head(bike)));
  }

  /** Another entry, often of another kind, in the place of one that is there. */
  private Entry corrected() {
    Entry other = added();
    Head head = other.head();
    EntryId id = dice.any(notebook.entries()).id();
    return other.with(
        new Head(
            id, head.bike(), head.day(), head.order(), head.time(), head.meter(), head.note()));
  }

  private void throwIds() {
    byType.put("BikeId", () -> dice.any(notebook.bikes()).id());
    byType.put("TrackId", () -> dice.any(notebook.shelf().tracks()).id());
    byType.put("RiderId", () -> dice.any(notebook.shelf().riders()).id());
    byType.put("MotoId", this::moto);
    byType.put("SettingId", () -> setting().id());
    byType.put("ProposalId", this::proposal);
    byType.put("StepId", this::step);
  }

  private MotoId moto() {
    return session.motos().isEmpty() ? new MotoId("none") : dice.any(session.motos()).id();
  }

  private Setting setting() {
    return dice.any(sheet.settings());
  }

  private ProposalId proposal() {
    List<Proposal> all = advice.map(Entry.Advice::proposals).orElse(List.of());
    return all.isEmpty() ? new ProposalId("none") : dice.any(all).id();
  }

  private StepId step() {
    List<StepDone> done = job.map(Entry.RebuildJob::done).orElse(List.of());
    return done.isEmpty() ? new StepId("stand") : dice.any(done).step();
  }

  private void throwParts() {
    byType.put("Change", () -> dice.change(sheet, setting()));
    byType.put("Placed", () -> dice.placed(sheet, setting()));
    byType.put("Moto", () -> entries.moto(sheet));
    byType.put("Feel", entries::feel);
    byType.put("Feel$Key", this::feelKey);
    byType.put(
        "OptionalInt",
        () ->
            dice.maybe(() -> dice.between(1, 10)).map(OptionalInt::of).orElse(OptionalInt.empty()));
    byType.put("List<Lap>", entries::laps);
    byType.put("TravelUsed", entries::travel);
    byType.put("boolean", () -> dice.once(2));
    byType.put("int", () -> dice.below(5));
    byType.put("Conditions", entries::conditions);
    byType.put("Optional<Conditions>", () -> dice.maybe(entries::conditions));
    byType.put("Optional<EndOfDayCheck>", () -> dice.maybe(() -> entries.check(sheet)));
    byType.put("Optional<Amount>", () -> dice.maybe(entries::meter));
    byType.put("java.lang.String", () -> dice.once(2) ? dice.name() : dice.note());
    byType.put(
        "java.time.LocalDate",
        () ->
            switch (dice.below(3)) {
              case 0 -> dice.any(bike.sheets()).from();
              case 1 -> dice.any(bike.sheets()).from().minusDays(1 + dice.below(3));
              default -> entries.head(bike).day();
            });
    byType.put("StepDone", () -> entries.step(job.map(this::sheet).orElse(sheet)));
    byType.put("Outcome", () -> dice.any(Outcome.class));
    byType.put("Answer", entries::answer);
    byType.put("Head", () -> entries.head(bike));
    byType.put("Entry$HandedOver", () -> entries.handedOver(entries.head(bike)));
    byType.put("Entry$Advice", this::fromCoach);
    byType.put("List<Edit>", this::together);
  }

  /** Through a handing over of the same bike, where there was one. */
  private Entry.Advice fromCoach() {
    Entry.Advice any = entries.advice(entries.head(bike));
    Optional<HandOverId> own =
        notebook.entries().stream()
            .filter(entry -> entry.bike().equals(bike.id()))
            .filter(Entry.HandedOver.class::isInstance)
            .map(entry -> ((Entry.HandedOver) entry).handOver())
            .findFirst();
    return own.map(id -> new Source.Coach(id, dice.name()))
        .map(coach -> new Entry.Advice(any.head(), coach, any.proposals(), any.general()))
        .orElse(any);
  }

  private Feel.Key feelKey() {
    List<Feel> noted = new ArrayList<>(List.of(entries.feel()));
    session.motos().forEach((Moto moto) -> noted.addAll(moto.report().feel()));
    return noted.get(noted.size() - 1).key();
  }

  private Sheet sheet(Entry.RebuildJob rebuild) {
    return notebook.shelf().bike(rebuild.bike()).orElseThrow().sheetOn(rebuild.job().sheetFrom());
  }

  private List<Edit> together() {
    List<Class<?>> simple = kinds(Edit.class).filter(kind -> kind != Edit.Together.class).toList();
    List<Edit> edits = new ArrayList<>();
    for (int i = dice.between(1, 3); i > 0; i--) {
      edits.add(of(dice.any(simple)));
    }
    return edits;
  }

  private void throwShelf() {
    byType.put("Rider", () -> Notebooks.rider(dice, "rider-" + dice.between(1, 5)));
    byType.put("Track", () -> Notebooks.track(dice, "track-" + dice.between(1, 5)));
    byType.put("Oil", () -> Notebooks.oil(dice, dice.id("oil")));
    byType.put("Bike", () -> Notebooks.bike(dice, new BikeId(dice.id("bike"))));
    byType.put("Sheet", this::newSheet);
    byType.put("Display", () -> dice.any(List.of(Display.METRIC, Display.US)));
    byType.put("List<RuleChange>", () -> Notebooks.rules(dice));
  }

  private Sheet newSheet() {
    Sheet newest = bike.latestSheet();
    return newest.with(newest.from().plusDays(dice.below(90)), dice.note());
  }
}
