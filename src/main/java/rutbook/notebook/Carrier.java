package rutbook.notebook;

/** Where a setting sits: in both legs, in one leg of a split-function fork, or once. */
public enum Carrier {
  PAIR,
  LEFT,
  RIGHT,
  SINGLE
}
