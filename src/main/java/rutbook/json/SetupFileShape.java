package rutbook.json;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rutbook.notebook.Bike;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.HandOverId;
import rutbook.notebook.MotoId;
import rutbook.notebook.NotebookId;
import rutbook.notebook.Reading;
import rutbook.notebook.Rider;
import rutbook.notebook.SettingId;
import rutbook.notebook.Setup;
import rutbook.notebook.Shared;
import rutbook.notebook.Track;
import rutbook.share.ChosenSetup;
import rutbook.share.CoachPart;
import rutbook.share.Excerpt;
import rutbook.share.HandOver;
import rutbook.share.SetupFile;
import rutbook.share.Suggested;
import rutbook.units.Display;

/** A setup file, with what it is and in which format at its head, and its checksum at its end. */
final class SetupFileShape extends RecordShape<SetupFileShape.WithChecksum> {
  static final String SETUP = "setup";
  static final String CHECKSUM = "checksum";

  /** A file with the checksum that stands in it, if one does. */
  record WithChecksum(SetupFile file, Optional<String> checksum) {
    private Excerpt excerpt() {
      return file.excerpt();
    }
  }

  private final Field<String> what =
      required(NotebookShape.WHAT, new Constant(SETUP), whole -> SETUP);
  private final Field<Integer> format =
      required(NotebookShape.FORMAT, Numbers.WHOLE, whole -> SetupJson.FORMAT);
  private final Field<HandOver> handOver =
      required("handOver", new HandOverShape(), whole -> whole.file().handOver());
  private final Field<Display> units =
      required("units", new DisplayShape(), whole -> whole.excerpt().display());
  private final Field<Rider> rider =
      required("rider", new RiderShape(), whole -> whole.excerpt().rider());
  private final Field<Bike> bike =
      required("bike", new BikeShape(), whole -> whole.excerpt().bike());
  private final Field<List<Track>> tracks =
      list("tracks", new TrackShape(), whole -> whole.excerpt().tracks());
  private final Field<List<Entry>> entries =
      list("entries", new HandedEntryShape(), whole -> whole.excerpt().entries());
  private final Field<List<ChosenSetup>> setups =
      required("setups", new ListShape<>(new ChosenSetupShape()), whole -> whole.file().setups());
  private final Field<Optional<CoachPart>> coach =
      optional("coach", new CoachShape(), whole -> whole.file().coach());
  private final Field<Optional<String>> checksum =
      optional(CHECKSUM, Texts.TEXT, WithChecksum::checksum);

  @Override
  WithChecksum make(Got got) {
    Excerpt excerpt =
        new Excerpt(
            got.get(units), got.get(rider), got.get(bike), got.get(tracks), got.get(entries));
    SetupFile file = new SetupFile(got.get(handOver), excerpt, got.get(setups), got.get(coach));
    return new WithChecksum(file, got.get(checksum));
  }

  /** By which the handing over is known again, when it was, and what was ticked. */
  private static final class HandOverShape extends RecordShape<HandOver> {
    private final Field<HandOverId> id = required("id", Ids.HAND_OVER, HandOver::id);
    private final Field<NotebookId> notebook =
        required("notebook", Ids.NOTEBOOK, HandOver::notebook);
    private final Field<LocalDate> day = required("day", Texts.DAY, HandOver::day);
    private final Field<Set<Shared>> shared =
        usually(Set.of(), "shared", Words.several(Shared.class), HandOver::shared);
    private final Field<String> question = note("question", HandOver::question);

    @Override
    HandOver make(Got got) {
      return new HandOver(
          got.get(id), got.get(notebook), got.get(day), got.get(shared), got.get(question));
    }
  }

  /** The entries that a setup file may have. */
  private static final class HandedEntryShape extends KindsShape<Entry> {
    HandedEntryShape() {
      add(Entry.Session.class, new SessionShape());
      add(Entry.SagMeasured.class, new SagMeasuredShape());
    }
  }

  /** A setup with what it was. */
  private static final class ChosenSetupShape extends RecordShape<ChosenSetup> {
    private final Field<ChosenSetup.What> what =
        required("what", Words.of(ChosenSetup.What.class), ChosenSetup::what);
    private final Field<LocalDate> day = required("day", Texts.DAY, ChosenSetup::day);
    private final Field<LocalDate> sheetFrom =
        required("sheetFrom", Texts.DAY, ChosenSetup::sheetFrom);
    private final Field<Optional<EntryId>> session =
        optional("session", Ids.ENTRY, ChosenSetup::session);
    private final Field<Optional<MotoId>> moto = optional("moto", Ids.MOTO, ChosenSetup::moto);
    private final Field<Setup> setup = required("setup", new SetupShape(), ChosenSetup::setup);

    @Override
    ChosenSetup make(Got got) {
      return new ChosenSetup(
          got.get(what),
          got.get(day),
          got.get(sheetFrom),
          got.get(setup),
          got.get(session),
          got.get(moto));
    }
  }

  /** What the coach says. */
  private static final class CoachShape extends RecordShape<CoachPart> {
    private final Field<String> name = required("name", Texts.TEXT, CoachPart::name);
    private final Field<Optional<LocalDate>> handedBack =
        optional("handedBack", Texts.DAY, CoachPart::handedBack);
    private final Field<List<Suggested>> proposals =
        list("proposals", new SuggestedShape(), CoachPart::proposals);
    private final Field<String> general = note("general", CoachPart::general);

    @Override
    CoachPart make(Got got) {
      return new CoachPart(
          got.get(name), got.get(handedBack), got.get(proposals), got.get(general));
    }
  }

  /** One setting that the coach would move. */
  private static final class SuggestedShape extends RecordShape<Suggested> {
    private final Field<SettingId> setting = required("setting", Ids.SETTING, Suggested::setting);
    private final Field<Reading> to = required("to", ReadingShape.READING, Suggested::to);
    private final Field<String> reason = note("reason", Suggested::reason);

    @Override
    Suggested make(Got got) {
      return new Suggested(got.get(setting), got.get(to), got.get(reason));
    }
  }
}
