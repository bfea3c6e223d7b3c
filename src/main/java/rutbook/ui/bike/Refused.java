package rutbook.ui.bike;

import rutbook.ui.controls.Ask;

/** What was answered to a question cannot be; the sentence is shown below it. */
final class Refused extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient Ask<?> ask;

  Refused(Ask<?> ask, String sentence) {
    super(sentence, null, false, false);
    this.ask = ask;
  }

  Ask<?> ask() {
    return ask;
  }
}
