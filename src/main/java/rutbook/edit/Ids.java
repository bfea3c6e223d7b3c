package rutbook.edit;

/** Where new ids come from: handed in, so that an edit stays pure and tests know what comes. */
@FunctionalInterface
public interface Ids {
  /** A text that was never given before and fits an {@link rutbook.notebook.Id}. */
  String next();
}
