package rutbook.ui.bike;

import java.util.Optional;
import java.util.function.Supplier;
import rutbook.notebook.Range;
import rutbook.ui.controls.AskText;
import rutbook.units.Amount;
import rutbook.units.Unit;

/** The two stops of a setting, as questions of its form. */
final class StopsPart {
  private final Form form;
  private final AskText<Amount> least;
  private final AskText<Amount> most;

  StopsPart(Form form, Optional<Range> range, Supplier<Unit> unit) {
    this.form = form;
    Fields fields = form.fields();
    least =
        form.ask(fields.amountIn("setting-least", "setting.least", range.map(Range::least), unit));
    most = form.ask(fields.amountIn("setting-most", "setting.most", range.map(Range::most), unit));
  }

  Range read() {
    Amount from = form.take(least);
    Amount to = form.take(most);
    return form.blame(most, () -> new Range(from, to));
  }
}
