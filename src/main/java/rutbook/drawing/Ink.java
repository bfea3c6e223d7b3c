package rutbook.drawing;

/** The roles of colour; each surface looks up its own shade of them. */
public enum Ink {
  /** The ground of the page: what a hollow mark is filled with. */
  PAGE,
  INK,
  SOFT,
  HAIR,
  /** Evidence, better, the left of a comparison. */
  BLUE,
  /** Proposal, due, worse, the right of a comparison. */
  OCHRE,
  /** Overdue, refused, legs that differ. */
  BRICK
}
