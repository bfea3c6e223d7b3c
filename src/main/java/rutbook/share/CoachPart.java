package rutbook.share;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.Checks;
import rutbook.notebook.SettingId;

/**
 * What the coach says: at most one proposal a setting, and general advice.
 *
 * @param handedBack the day it was handed back; empty while it is being written
 */
public record CoachPart(
    String name, Optional<LocalDate> handedBack, List<Suggested> proposals, String general) {
  public CoachPart {
    name = Checks.name("coach", name);
    handedBack.ifPresent(Checks::day);
    proposals = Checks.unique("proposal", proposals, Suggested::setting);
    general = Checks.note("advice", general);
  }

  /** Nothing said yet. */
  public static CoachPart of(String name) {
    return new CoachPart(name, Optional.empty(), List.of(), "");
  }

  public boolean saysNothing() {
    return proposals.isEmpty() && general.isBlank();
  }

  public Optional<Suggested> proposal(SettingId setting) {
    return proposals.stream().filter(each -> each.setting().equals(setting)).findFirst();
  }

  /** With a proposal, in place of an earlier one for the same setting. */
  public CoachPart with(Suggested proposal) {
    List<Suggested> next = new ArrayList<>(proposals);
    int place = 0;
    while (place < next.size() && !next.get(place).setting().equals(proposal.setting())) {
      place++;
    }
    if (place < next.size()) {
      next.set(place, proposal);
    } else {
      next.add(proposal);
    }
    return new CoachPart(name, handedBack, next, general);
  }

  public CoachPart without(SettingId setting) {
    List<Suggested> next =
        proposals.stream().filter(each -> !each.setting().equals(setting)).toList();
    return new CoachPart(name, handedBack, next, general);
  }

  public CoachPart named(String newName) {
    return new CoachPart(newName, handedBack, proposals, general);
  }

  public CoachPart advising(String newGeneral) {
    return new CoachPart(name, handedBack, proposals, newGeneral);
  }

  public CoachPart handedBackOn(LocalDate day) {
    return new CoachPart(name, Optional.of(day), proposals, general);
  }
}
