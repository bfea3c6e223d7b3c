package rutbook.notebook;

/** What was ridden. */
public enum MotoKind {
  MOTO,
  LOOP,
  TEST
}
