package rutbook.notebook;

/** What was checked before riding. */
public enum Ready {
  TYRES_COLD,
  AIR_SPRING_COLD,
  FORK_AIR_BLED,
  AXLE_ALIGNED
}
