package rutbook.rebuild;

/** Where a step is done, in the order in which a bench prefers them. */
public enum Place {
  FLOOR,
  STAND,
  BENCH,
  SHOP,
  RIDE
}
