package rutbook.notebook;

/** A fault that ends the ride until it is put right. */
public enum FaultSeen {
  LEAK,
  LOOSE,
  BENT,
  KNOCK
}
