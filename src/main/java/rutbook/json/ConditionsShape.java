package rutbook.json;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import rutbook.notebook.Conditions;
import rutbook.notebook.Ground;
import rutbook.notebook.Moisture;
import rutbook.notebook.Ready;
import rutbook.units.Amount;

/** What the ground and the day were like. */
final class ConditionsShape extends RecordShape<Conditions> {
  {
    onOneLine();
  }

  private final Field<Optional<Ground>> ground =
      optional("ground", Words.of(Ground.class), Conditions::ground);
  private final Field<Optional<Moisture>> moisture =
      optional("moisture", Words.of(Moisture.class), Conditions::moisture);
  private final Field<OptionalInt> roughness =
      usually(OptionalInt.empty(), "roughness", Numbers.WHOLE_IF_KNOWN, Conditions::roughness);
  private final Field<Optional<Amount>> air = optional("air", AmountShape.AMOUNT, Conditions::air);
  private final Field<Set<Ready>> ready =
      usually(Set.of(), "ready", Words.several(Ready.class), Conditions::ready);

  @Override
  Conditions make(Got got) {
    return new Conditions(
        got.get(ground), got.get(moisture), got.get(roughness), got.get(air), got.get(ready));
  }
}
