package rutbook.json;

import java.util.Optional;
import rutbook.compare.Group;
import rutbook.compare.LegDifference;
import rutbook.compare.Room;
import rutbook.compare.SettingDifference;
import rutbook.compare.Standing;
import rutbook.notebook.How;
import rutbook.notebook.Reading;
import rutbook.notebook.Role;
import rutbook.notebook.Sense;
import rutbook.notebook.Setting;
import rutbook.notebook.Side;
import rutbook.notebook.Value;
import rutbook.notebook.WhyUnknown;

/**
 * Settings of an answer, what they read and how two of them differ. A reading is an amount, {@code
 * {"unknown": "stripped"}}, or one of these for each leg.
 */
final class SettingFacts {
  static final Facts<Setting> SETTING =
      Facts.line(Setting.class)
          .with("id", Ids.SETTING, Setting::id)
          .with("name", Texts.TEXT, Setting::name)
          .with("role", Words.of(Role.class), Setting::role)
          .with("group", Words.of(Group.class), setting -> Group.of(setting.role()));

  private static final Facts<Value.Unknown> UNKNOWN =
      Facts.line(Value.Unknown.class)
          .with("unknown", Words.of(WhyUnknown.class), Value.Unknown::why);

  static final Writes<Value> VALUE =
      (value, out) -> {
        if (value instanceof Value.Known known) {
          AmountFacts.AMOUNT.write(known.amount(), out);
        } else {
          UNKNOWN.write((Value.Unknown) value, out);
        }
      };

  private static final Facts<Reading.Pair> LEGS =
      Facts.line(Reading.Pair.class)
          .with("left", VALUE, Reading.Pair::left)
          .with("right", VALUE, Reading.Pair::right);

  static final Writes<Reading> READING =
      (reading, out) -> {
        if (reading instanceof Reading.Pair legs) {
          LEGS.write(legs, out);
        } else {
          VALUE.write(((Reading.One) reading).value(), out);
        }
      };

  private static final Facts<Standing> STANDING =
      Facts.line(Standing.class)
          .with("reading", READING, Standing::reading)
          .with("how", Words.of(How.class), standing -> standing.placed().how())
          .flag("outside", Standing::outside)
          .flag("legsDiffer", Standing::legsDiffer)
          .with("room", Words.of(Room.class), Standing::room);

  private static final Facts<LegDifference> LEG =
      Facts.line(LegDifference.class)
          .ifKnown("leg", Words.of(Side.class), LegDifference::leg)
          .with("from", VALUE, LegDifference::from)
          .with("to", VALUE, LegDifference::to)
          .ifKnown("by", AmountFacts.STEP, LegDifference::by)
          .ifKnown("sense", Words.of(Sense.class), LegDifference::sense);

  static final Facts<SettingDifference> DIFFERENCE =
      Facts.of(SettingDifference.class)
          .with("setting", SETTING, SettingDifference::setting)
          .flag("same", SettingDifference::isSame)
          .ifKnown("from", STANDING, SettingDifference::from)
          .ifKnown("to", STANDING, SettingDifference::to)
          .list("legs", LEG, SettingDifference::legs);

  private SettingFacts() {}

  /** A reading beside that of the baseline. */
  record Beside(Setting setting, Optional<Reading> now, Optional<Reading> baseline) {
    boolean away() {
      return now.isPresent() && baseline.isPresent() && !now.get().sameAs(baseline.get());
    }
  }

  static final Facts<Beside> BESIDE =
      Facts.of(Beside.class)
          .with("setting", SETTING, Beside::setting)
          .ifKnown("reading", READING, Beside::now)
          .ifKnown("baseline", READING, Beside::baseline)
          .flag("away", Beside::away);
}
