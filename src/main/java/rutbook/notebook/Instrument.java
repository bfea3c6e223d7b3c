package rutbook.notebook;

/** What a fill was measured with. */
public enum Instrument {
  RING_GAUGE,
  MEASURING_CUP,
  SCALE
}
