package rutbook.notebook;

/** How a fork carries its oil and its load. */
public enum ForkKind {
  OPEN_BATH,
  PRESSURISED_CARTRIDGE,
  AIR
}
