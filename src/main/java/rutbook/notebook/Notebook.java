package rutbook.notebook;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import rutbook.units.Display;

/**
 * One notebook: riders, bikes, tracks, oils and what happened, checked as a whole. Immutable; the
 * order in which entries are stored means nothing.
 */
public final class Notebook {
  public static final int MOST_ENTRIES = 100_000;

  private final NotebookId id;
  private final Shelf shelf;
  private final List<Entry> entries;

  /** Where each entry stands; shared by all notebooks in which an entry was only replaced. */
  private final Map<EntryId, Integer> places;

  private final List<RuleChange> ruleChanges;
  private final Display display;

  private Notebook(
      NotebookId id,
      Shelf shelf,
      List<Entry> entries,
      Map<EntryId, Integer> places,
      List<RuleChange> ruleChanges,
      Display display) {
    this.id = id;
    this.shelf = shelf;
    this.entries = entries;
    this.places = places;
    this.ruleChanges = ruleChanges;
    this.display = display;
  }

  /**
   * A notebook checked as a whole.
   *
   * @throws NotebookException naming the place of the first fault
   */
  public static Notebook of(
      NotebookId id,
      Shelf shelf,
      List<Entry> entries,
      List<RuleChange> ruleChanges,
      Display display) {
    Checks.list("entries", entries, MOST_ENTRIES);
    Map<EntryId, Integer> places = indexed(entries);
    EntryCheck check = new EntryCheck(shelf, entry -> at(entries, places, entry));
    entries.forEach(check::check);
    return new Notebook(
        id,
        shelf,
        List.copyOf(entries),
        places,
        Checks.unique("rule", ruleChanges, RuleChange::rule),
        display);
  }

  public static Notebook empty(NotebookId id) {
    return of(id, Shelf.EMPTY, List.of(), List.of(), Display.METRIC);
  }

  private static Map<EntryId, Integer> indexed(List<Entry> entries) {
    Map<EntryId, Integer> places = new HashMap<>(entries.size() * 2);
    for (int i = 0; i < entries.size(); i++) {
      EntryId id = entries.get(i).id();
      if (places.put(id, i) != null) {
        throw new NotebookException(Fault.TWICE, "entry", id).in("entries");
      }
    }
    return places;
  }

  /** The entry of an id, or null as a map gives it. */
  private static Entry at(List<Entry> entries, Map<EntryId, Integer> places, EntryId id) {
    Integer place = places.get(id);
    return place == null ? null : entries.get(place);
  }

  public NotebookId id() {
    return id;
  }

  public Shelf shelf() {
    return shelf;
  }

  public List<Bike> bikes() {
    return shelf.bikes();
  }

  public List<Entry> entries() {
    return entries;
  }

  public List<RuleChange> ruleChanges() {
    return ruleChanges;
  }

  public Display display() {
    return display;
  }

  public Optional<Entry> entry(EntryId entry) {
    return Optional.ofNullable(at(entries, places, entry));
  }

  /**
   * With an entry replaced where it stood, or added at the end. Only that entry is checked again:
   * the others do not depend on it, but for its id, its kind and its bike.
   */
  public Notebook with(Entry entry) {
    new EntryCheck(shelf, id -> at(entries, places, id)).check(entry);
    List<Entry> next = new ArrayList<>(entries);
    Integer place = places.get(entry.id());
    if (place == null) {
      return withAnother(entry, next);
    }
    Entry before = next.set(place, entry);
    return before.getClass() == entry.getClass() && before.bike().equals(entry.bike())
        ? new Notebook(id, shelf, Collections.unmodifiableList(next), places, ruleChanges, display)
        : of(id, shelf, next, ruleChanges, display);
  }

  private Notebook withAnother(Entry entry, List<Entry> next) {
    if (next.size() == MOST_ENTRIES) {
      throw new NotebookException(Fault.TOO_MANY, "entries", next.size() + 1, MOST_ENTRIES);
    }
    Map<EntryId, Integer> nextPlaces = new HashMap<>(places);
    nextPlaces.put(entry.id(), next.size());
    next.add(entry);
    return new Notebook(
        id, shelf, Collections.unmodifiableList(next), nextPlaces, ruleChanges, display);
  }

  /** Without an entry; what names it (a job its baseline) must be gone first. */
  public Notebook without(EntryId entry) {
    return of(
        id,
        shelf,
        entries.stream().filter(each -> !each.id().equals(entry)).toList(),
        ruleChanges,
        display);
  }

  /** With another shelf: everything is checked again, since sheets bound the entries. */
  public Notebook with(Shelf newShelf) {
    return of(id, newShelf, entries, ruleChanges, display);
  }

  public Notebook with(Bike bike) {
    return with(shelf.with(bike));
  }

  public Notebook with(Display newDisplay) {
    return new Notebook(id, shelf, entries, places, ruleChanges, newDisplay);
  }

  public Notebook withRuleChanges(List<RuleChange> newChanges) {
    List<RuleChange> checked = Checks.unique("rule", newChanges, RuleChange::rule);
    return new Notebook(id, shelf, entries, places, checked, display);
  }

  /** The same notebook under another name: a copy is a notebook of its own. */
  public Notebook copiedAs(NotebookId newId) {
    return new Notebook(newId, shelf, entries, places, ruleChanges, display);
  }

  @Override
  public boolean equals(Object other) {
    return this == other
        || other instanceof Notebook that
            && id.equals(that.id)
            && shelf.equals(that.shelf)
            && entries.equals(that.entries)
            && ruleChanges.equals(that.ruleChanges)
            && display.equals(that.display);
  }

  @Override
  public int hashCode() {
    return Objects.hash(id, shelf, entries, ruleChanges, display);
  }

  @Override
  public String toString() {
    return "Notebook " + id + " with " + entries.size() + " entries";
  }
}
