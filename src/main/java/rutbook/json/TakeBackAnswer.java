package rutbook.json;

import java.util.Optional;
import rutbook.notebook.EntryId;
import rutbook.notebook.Setting;
import rutbook.share.Returned;
import rutbook.share.Standing;
import rutbook.share.TakeBack;

/** What {@code take-back} answers: each proposal, how it stands, and whether it was kept. */
public final class TakeBackAnswer {
  private record Taken(TakeBack back, boolean hasChecksum, Optional<EntryId> kept) {}

  private static final Facts<Returned> RETURNED =
      Facts.of(Returned.class)
          .with("setting", Ids.SETTING, Returned::id)
          .ifKnown("name", Texts.TEXT, returned -> returned.setting().map(Setting::name))
          .with("standing", Words.of(Standing.class), Returned::standing)
          .ifKnown("handedOver", SettingFacts.READING, Returned::handedOver)
          .ifKnown("now", SettingFacts.READING, Returned::now)
          .with("to", SettingFacts.READING, returned -> returned.suggested().to())
          .ifKnown("target", SettingFacts.READING, Returned::target)
          .note("reason", returned -> returned.suggested().reason());

  private static final Facts<Taken> TAKEN =
      Facts.of(Taken.class)
          .with("handOver", Ids.HAND_OVER, taken -> taken.back().own().handOver())
          .with("coach", Texts.TEXT, taken -> taken.back().coach().name())
          .ifKnown("handedBack", Texts.DAY, taken -> taken.back().coach().handedBack())
          .flag("hasChecksum", Taken::hasChecksum)
          .flag("changedOnTheWay", taken -> taken.back().changedOnTheWay())
          .list("proposals", RETURNED, taken -> taken.back().proposals())
          .note("general", taken -> taken.back().coach().general())
          .ifKnown("kept", Ids.ENTRY, Taken::kept);

  private TakeBackAnswer() {}

  /**
   * @param kept the entry that holds it now; empty when the notebook was not changed
   */
  public static Reply of(TakeBack back, boolean hasChecksum, Optional<EntryId> kept) {
    return Reply.of("take-back", TAKEN, new Taken(back, hasChecksum, kept));
  }
}
