package rutbook.words;

import java.util.ArrayList;
import java.util.List;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Shared;
import rutbook.share.ChosenSetup;
import rutbook.share.CoachPart;
import rutbook.share.Preview;
import rutbook.share.Returned;
import rutbook.share.ShareException;
import rutbook.share.TakeBack;

/** What is handed over and what comes back, in sentences. */
public final class ShareWords {
  private static final String AREA = "Share";

  private final Phrases phrases;
  private final ReadingWords readings;
  private final ChangeWords changes;
  private final FaultWords faults;

  public ShareWords(Phrases phrases) {
    this.phrases = phrases;
    this.readings = new ReadingWords(phrases);
    this.changes = new ChangeWords(phrases);
    this.faults = new FaultWords(phrases);
  }

  /** Why it cannot be. */
  public String sentence(ShareException thrown) {
    return phrases.say(AREA, "fault." + thrown.fault().name(), thrown.facts().toArray());
  }

  /** All that is in a file, a line each, and at the end what stays at home. */
  public List<String> preview(Preview preview) {
    List<String> lines = new ArrayList<>();
    lines.add(phrases.say(AREA, "preview.rider", preview.rider()));
    lines.add(phrases.say(AREA, "preview.bike", preview.bike(), preview.settings()));
    preview.sheets().forEach(from -> lines.add(phrases.say(AREA, "preview.sheet", from)));
    preview.setups().forEach(setup -> lines.add(setup(setup)));
    preview.rides().forEach(ride -> lines.add(ride(ride)));
    if (preview.sagMeasured() > 0) {
      lines.add(phrases.say(AREA, "preview.sag", preview.sagMeasured()));
    }
    preview.weights().forEach(each -> lines.add(phrases.say(AREA, "preview.weight", each)));
    preview.notes().forEach(each -> lines.add(phrases.say(AREA, "preview.note", each)));
    if (!preview.question().isBlank()) {
      lines.add(phrases.say(AREA, "preview.question", preview.question()));
    }
    preview.stays().forEach(each -> lines.add(stays(each)));
    return lines;
  }

  /** What a setup was when it was chosen: "baseline of 3 May 2026". */
  public String setup(ChosenSetup setup) {
    return phrases.say(AREA, "setup." + setup.what().name(), setup.day());
  }

  private String ride(Preview.Ride ride) {
    String what = phrases.say(AREA, "preview.ride", ride.motos(), ride.feel(), ride.laps());
    return ride.track()
        .map(track -> phrases.say(AREA, "preview.ride.named", ride.day(), track, what))
        .orElseGet(() -> phrases.say(AREA, "preview.ride.unnamed", ride.day(), what));
  }

  /** That something was not ticked and does not go along. */
  public String stays(Shared shared) {
    return phrases.say(AREA, "stays." + shared.name());
  }

  /** What can be ticked: "Names of places". */
  public String tick(Shared shared) {
    return phrases.say(AREA, "tick." + shared.name());
  }

  /** Who says it, and when it was handed back. */
  public String from(CoachPart coach) {
    return coach
        .handedBack()
        .map(day -> phrases.say(AREA, "from", coach.name(), day))
        .orElseGet(() -> phrases.say(AREA, "from.undated", coach.name()));
  }

  /** One proposal, beside what was handed over and what is on the bike now. */
  public String returned(Returned returned) {
    String key = "standing." + returned.standing().name();
    if (returned.setting().isEmpty()) {
      return phrases.say(AREA, key, returned.id());
    }
    Setting setting = returned.setting().get();
    String name = phrases.sentence(readings.setting(setting));
    Reading to = returned.suggested().to();
    return switch (returned.standing()) {
      case UNCHANGED, TAKEN_BEFORE -> phrases.say(AREA, key, name, change(returned, to));
      case CHANGED ->
          returned
              .handedOver()
              .map(
                  before ->
                      phrases.say(
                          AREA, key, name, change(returned, to), readings.reading(setting, before)))
              .orElseGet(() -> phrases.say(AREA, "standing.UNCHANGED", name, change(returned, to)));
      case HELD ->
          phrases.say(
              AREA,
              key,
              name,
              readings.other(to),
              returned.held().map(faults::what).orElse(""),
              change(returned, returned.target().orElse(to)));
      case ALREADY_SO -> phrases.say(AREA, key, name, readings.reading(setting, to));
      case GONE, NOT_YOURS -> phrases.say(AREA, key, name, readings.other(to));
    };
  }

  private String change(Returned returned, Reading to) {
    Setting setting = returned.setting().orElseThrow();
    return returned
        .now()
        .or(returned::handedOver)
        .map(now -> changes.change(setting, now, to))
        .orElseGet(() -> readings.reading(setting, to));
  }

  /**
   * What has to be known before the proposals are looked at.
   *
   * @param hasChecksum whether the file had one, which fitted
   */
  public List<String> remarks(TakeBack back, boolean hasChecksum) {
    List<String> remarks = new ArrayList<>();
    if (!hasChecksum) {
      remarks.add(phrases.say(AREA, "no-checksum"));
    }
    if (back.changedOnTheWay()) {
      remarks.add(phrases.say(AREA, "changed-on-the-way"));
    }
    return remarks;
  }

  /** The word with which a proposal is declined that there is nothing to follow of. */
  public String gone() {
    return phrases.say(AREA, "gone");
  }
}
