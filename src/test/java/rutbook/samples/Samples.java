package rutbook.samples;

import rutbook.notebook.Notebook;

/** The three sample notebooks, as they are told. */
public final class Samples {
  private Samples() {}

  public static Notebook season() {
    return SampleSeason.make();
  }

  public static Notebook firstDay() {
    return SampleFirstDay.make();
  }

  public static Notebook splitFork() {
    return SampleSplitFork.make();
  }
}
