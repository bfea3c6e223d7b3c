package rutbook.ui.bike;

import java.time.DateTimeException;
import java.util.function.Supplier;
import rutbook.notebook.NotebookException;
import rutbook.ui.controls.Ask;
import rutbook.units.AmountException;

/** Reads questions, and turns what is wrong with an answer into the sentence below its question. */
final class Answers {
  private final BikeDesk desk;

  Answers(BikeDesk desk) {
    this.desk = desk;
  }

  /**
   * @throws Refused when the answer cannot be
   */
  <T> T take(Ask<T> ask) {
    return blame(ask, ask::read);
  }

  /**
   * What a reading comes to; a fault of it is told below the question to blame.
   *
   * @throws Refused when it cannot be
   */
  <T> T blame(Ask<?> ask, Supplier<T> reading) {
    try {
      return reading.get();
    } catch (AmountException fault) {
      throw new Refused(ask, desk.words().fault(fault));
    } catch (NotebookException fault) {
      throw new Refused(ask, desk.words().fault(fault));
    } catch (DateTimeException fault) {
      throw new Refused(ask, desk.text("bad.day", desk.desk().today().toString()));
    }
  }
}
