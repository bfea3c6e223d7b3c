package rutbook.json;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.Shared;
import rutbook.share.ChosenSetup;
import rutbook.share.Preview;
import rutbook.share.SetupFile;

/** What {@code hand-over} answers: what is in the file, and where it was written. */
public final class HandOverAnswer {
  private record HandedOver(SetupFile setup, Preview preview, Optional<String> file) {}

  private static final Facts<ChosenSetup> SETUP =
      Facts.line(ChosenSetup.class)
          .with("what", Words.of(ChosenSetup.What.class), ChosenSetup::what)
          .with("day", Texts.DAY, ChosenSetup::day)
          .with("sheetFrom", Texts.DAY, ChosenSetup::sheetFrom);

  private static final Facts<Preview.Ride> RIDE =
      Facts.line(Preview.Ride.class)
          .with("day", Texts.DAY, Preview.Ride::day)
          .ifKnown("track", Texts.TEXT, Preview.Ride::track)
          .with("motos", Numbers.WHOLE, Preview.Ride::motos)
          .with("changes", Numbers.WHOLE, Preview.Ride::changes)
          .with("feel", Numbers.WHOLE, Preview.Ride::feel)
          .with("laps", Numbers.WHOLE, Preview.Ride::laps);

  private static final Facts<HandedOver> HANDED_OVER =
      Facts.of(HandedOver.class)
          .with("handOver", Ids.HAND_OVER, it -> it.setup().handOver().id())
          .ifKnown("file", Texts.TEXT, HandedOver::file)
          .with("checksum", Texts.TEXT, it -> SetupJson.checksum(it.setup()))
          .with("day", Texts.DAY, HandOverAnswer::day)
          .with("rider", Texts.TEXT, it -> it.preview().rider())
          .note("question", it -> it.preview().question())
          .shortList("sheets", Texts.DAY, it -> it.preview().sheets())
          .with("settings", Numbers.WHOLE, it -> it.preview().settings())
          .list("setups", SETUP, it -> it.preview().setups())
          .list("rides", RIDE, it -> it.preview().rides())
          .with("sagMeasured", Numbers.WHOLE, it -> it.preview().sagMeasured())
          .shortList("weights", AmountFacts.AMOUNT, it -> it.preview().weights())
          .list("notes", Texts.TEXT, it -> it.preview().notes())
          .shortList(
              "staysAtHome", Words.of(Shared.class), it -> List.copyOf(it.preview().stays()));

  private HandOverAnswer() {}

  private static LocalDate day(HandedOver handed) {
    return handed.setup().handOver().day();
  }

  /**
   * @param file where it was written; empty for a preview
   */
  public static Reply of(SetupFile setup, Preview preview, Optional<String> file) {
    return Reply.of("hand-over", HANDED_OVER, new HandedOver(setup, preview, file));
  }
}
