package rutbook.notebook;

/** What of a session goes along when a setup is handed over; nothing unless ticked. */
public enum Shared {
  PLACE_NAMES,
  LAPS,
  NOTES,
  WEIGHT
}
