package rutbook.share;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.Bounds;
import rutbook.notebook.Entry;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Proposal;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Timeline;

/** Compares three ways, setting by setting: own record, coach, now. */
final class Comparing {
  private final Timeline timeline;
  private final Setup handedOver;
  private final Setup now;
  private final Sheet sheet;
  private final List<Entry.Advice> before;

  Comparing(
      Timeline timeline, Entry.HandedOver own, LocalDate today, List<Entry.Advice> takenBefore) {
    this.timeline = timeline;
    this.handedOver = own.snapshot().setup();
    this.now = timeline.now();
    this.sheet = timeline.sheetOn(today);
    this.before = takenBefore;
  }

  Returned returned(Suggested suggested) {
    Optional<Setting> today = sheet.setting(suggested.setting());
    Optional<Setting> known = today.or(() -> once(suggested.setting()));
    if (known.isEmpty() || !fits(known.get(), suggested.to())) {
      return returned(suggested, known, Standing.NOT_YOURS);
    }
    if (before.stream().anyMatch(advice -> has(advice, suggested))) {
      return returned(suggested, known, Standing.TAKEN_BEFORE);
    }
    if (today.isEmpty()) {
      return returned(suggested, known, Standing.GONE);
    }
    return against(today.get(), suggested);
  }

  private Returned against(Setting setting, Suggested suggested) {
    Reading to = suggested.to();
    Optional<NotebookException> refusal =
        to.amounts().stream()
            .flatMap(amount -> Bounds.refusal(sheet, setting, amount).stream())
            .findFirst();
    if (refusal.isPresent()) {
      Reading held = Bounds.hold(sheet, setting, to);
      return new Returned(
          suggested,
          Optional.of(setting),
          handedOver.reading(setting.id()),
          now.reading(setting.id()),
          Standing.HELD,
          Optional.of(held),
          refusal);
    }
    Optional<Reading> present = now.reading(setting.id());
    Standing standing = Standing.CHANGED;
    if (present.isPresent() && present.get().sameAs(to)) {
      standing = Standing.ALREADY_SO;
    } else if (present.isPresent()
        && handedOver.reading(setting.id()).map(present.get()::sameAs).orElse(false)) {
      standing = Standing.UNCHANGED;
    }
    return returned(suggested, Optional.of(setting), standing);
  }

  private Returned returned(Suggested suggested, Optional<Setting> setting, Standing standing) {
    return new Returned(
        suggested,
        setting,
        handedOver.reading(suggested.setting()),
        now.reading(suggested.setting()),
        standing,
        standing.canBeFollowed() ? Optional.of(suggested.to()) : Optional.empty(),
        Optional.empty());
  }

  /** As the last sheet had it that had it at all. */
  private Optional<Setting> once(SettingId id) {
    return timeline.bike().sheets().stream()
        .flatMap(each -> each.setting(id).stream())
        .reduce((earlier, later) -> later);
  }

  private static boolean fits(Setting setting, Reading reading) {
    try {
      Bounds.requireFits(setting, reading);
      return true;
    } catch (NotebookException otherwise) {
      return false;
    }
  }

  private static boolean has(Entry.Advice advice, Suggested suggested) {
    return advice.proposals().stream().anyMatch(each -> isSame(each, suggested));
  }

  private static boolean isSame(Proposal proposal, Suggested suggested) {
    return proposal.setting().equals(suggested.setting())
        && proposal.to().sameAs(suggested.to())
        && proposal.reason().equals(suggested.reason());
  }
}
