package rutbook.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rutbook.compare.Subject;
import rutbook.edit.AdviceEdit;
import rutbook.json.SetupJson;
import rutbook.notebook.Bike;
import rutbook.notebook.Change;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.HandOverId;
import rutbook.notebook.Head;
import rutbook.notebook.Notebook;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Timeline;
import rutbook.share.CoachPart;
import rutbook.share.HandOver;
import rutbook.share.Packing;
import rutbook.share.SetupFile;
import rutbook.share.Suggested;

/** A season that was handed over and ridden on since, and the coach's answer to it. */
final class HandedSeason {
  static final LocalDate TODAY = LocalDate.of(2026, 11, 9);
  private static final LocalDate SENT = LocalDate.of(2026, 11, 1);
  private static final SettingId COMPRESSION = new SettingId("fork-compression");
  private static final SettingId REBOUND = new SettingId("fork-rebound");

  private HandedSeason() {}

  static SetupFile handedOver(Notebook season) {
    Timeline timeline = Timeline.of(season, season.bikes().get(0).id());
    HandOver handOver =
        new HandOver(
            new HandOverId("hand-over-1"), season.id(), SENT, Set.of(), "What for the whoops?");
    List<Subject> chosen = List.of(Subject.now(timeline));
    return Packing.of(season, timeline, chosen, handOver, Optional.empty());
  }

  /** With the record of it, and one setting moved since. */
  static Notebook riddenOn(Notebook season) {
    SetupFile file = handedOver(season);
    Bike bike = season.bikes().get(0);
    Entry.HandedOver record =
        new Entry.HandedOver(
            Head.of(new EntryId("handed-over"), bike.id(), SENT, 0),
            file.handOver().id(),
            file.snapshot(),
            SetupJson.checksum(file));
    Change moved = Change.of(REBOUND, stepped(file, REBOUND, 1));
    return new AdviceEdit.HandOver(record)
        .applyTo(season)
        .with(
            new Entry.Adjusted(
                Head.of(new EntryId("moved-since"), bike.id(), SENT.plusDays(3), 0),
                List.of(moved)));
  }

  /** Two proposals, one of them on the setting that was moved since. */
  static byte[] answer(Notebook season) {
    SetupFile file = handedOver(season);
    CoachPart coach =
        CoachPart.of("Jorun")
            .with(new Suggested(COMPRESSION, stepped(file, COMPRESSION, 2), "softer at the top"))
            .with(new Suggested(REBOUND, stepped(file, REBOUND, 2), ""))
            .advising("One thing at a time.");
    return SetupJson.write(file.with(coach.handedBackOn(SENT.plusDays(5))));
  }

  private static Reading stepped(SetupFile file, SettingId id, int steps) {
    Setting setting = file.sheet().setting(id).orElseThrow();
    Reading reading = file.asked().setup().reading(id).orElseThrow();
    for (int i = 0; i < steps; i++) {
      reading = reading.map(amount -> amount.plus(setting.scale().step()));
    }
    return reading;
  }
}
