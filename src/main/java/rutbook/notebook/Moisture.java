package rutbook.notebook;

/** How wet the ground is, from dust to mud. */
public enum Moisture {
  DUSTY,
  DRY,
  DAMP,
  WET,
  MUD
}
