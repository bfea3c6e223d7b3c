package rutbook.notebook;

import java.util.ArrayList;
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
  private final Map<EntryId, Entry> byId;
  private final List<RuleChange> ruleChanges;
  private final Display display;

  private Notebook(
      NotebookId id,
      Shelf shelf,
      List<Entry> entries,
      Map<EntryId, Entry> byId,
      List<RuleChange> ruleChanges,
      Display display) {
    this.id = id;
    this.shelf = shelf;
    this.entries = entries;
    this.byId = byId;
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
    Map<EntryId, Entry> byId = indexed(entries);
    EntryCheck check = new EntryCheck(shelf, byId::get);
    entries.forEach(check::check);
    return new Notebook(
        id,
        shelf,
        List.copyOf(entries),
        byId,
        Checks.unique("rule", ruleChanges, RuleChange::rule),
        display);
  }

  public static Notebook empty(NotebookId id) {
    return of(id, Shelf.EMPTY, List.of(), List.of(), Display.METRIC);
  }

  private static Map<EntryId, Entry> indexed(List<Entry> entries) {
    Map<EntryId, Entry> byId = new HashMap<>(entries.size() * 2);
    for (Entry entry : entries) {
      if (byId.put(entry.id(), entry) != null) {
        throw new NotebookException(Fault.TWICE, "entry", entry.id()).in("entries");
      }
    }
    return byId;
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
    return Optional.ofNullable(byId.get(entry));
  }

  /**
   * With an entry replaced where it stood, or added at the end. Only that entry is checked again:
   * the others do not depend on it, but for its id, its kind and its bike.
   */
  public Notebook with(Entry entry) {
    new EntryCheck(shelf, byId::get).check(entry);
    List<Entry> next = new ArrayList<>(entries);
    Entry before = byId.get(entry.id());
    if (before == null) {
      if (next.size() == MOST_ENTRIES) {
        throw new NotebookException(Fault.TOO_MANY, "entries", next.size() + 1, MOST_ENTRIES);
      }
      next.add(entry);
    } else {
      next.set(indexOf(before), entry);
      if (before.getClass() != entry.getClass() || !before.bike().equals(entry.bike())) {
        return of(id, shelf, next, ruleChanges, display);
      }
    }
    Map<EntryId, Entry> nextById = new HashMap<>(byId);
    nextById.put(entry.id(), entry);
    return new Notebook(id, shelf, List.copyOf(next), nextById, ruleChanges, display);
  }

  private int indexOf(Entry same) {
    for (int i = 0; i < entries.size(); i++) {
      if (entries.get(i) == same) {
        return i;
      }
    }
    throw new IllegalStateException(same.id().text());
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
    return new Notebook(id, shelf, entries, byId, ruleChanges, newDisplay);
  }

  public Notebook withRuleChanges(List<RuleChange> newChanges) {
    List<RuleChange> checked = Checks.unique("rule", newChanges, RuleChange::rule);
    return new Notebook(id, shelf, entries, byId, checked, display);
  }

  /** The same notebook under another name: a copy is a notebook of its own. */
  public Notebook copiedAs(NotebookId newId) {
    return new Notebook(newId, shelf, entries, byId, ruleChanges, display);
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
