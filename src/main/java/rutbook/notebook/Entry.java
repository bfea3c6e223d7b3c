package rutbook.notebook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.units.Amount;
import rutbook.units.Dimension;

/** Something that happened to a bike on a day. */
public sealed interface Entry {
  Head head();

  /** The same entry with another head. */
  Entry with(Head head);

  default EntryId id() {
    return head().id();
  }

  default BikeId bike() {
    return head().bike();
  }

  default LocalDate day() {
    return head().day();
  }

  /** One bike, one track, one day: the setup it started with, and its motos. */
  record Session(
      Head head,
      TrackId track,
      RiderId rider,
      Conditions conditions,
      Setup start,
      List<Moto> motos,
      Optional<EndOfDayCheck> check)
      implements Entry {
    public Session {
      motos = Checks.unique("moto", motos, Moto::id);
    }

    @Override
    public Session with(Head newHead) {
      return new Session(newHead, track, rider, conditions, start, motos, check);
    }

    public Session withMotos(List<Moto> newMotos) {
      return new Session(head, track, rider, conditions, start, newMotos, check);
    }

    public Session withStart(Setup newStart) {
      return new Session(head, track, rider, conditions, newStart, motos, check);
    }

    public Session withConditions(Conditions newConditions) {
      return new Session(head, track, rider, newConditions, start, motos, check);
    }

    public Session withCheck(Optional<EndOfDayCheck> newCheck) {
      return new Session(head, track, rider, conditions, start, motos, newCheck);
    }

    public Session at(TrackId newTrack, RiderId newRider) {
      return new Session(head, newTrack, newRider, conditions, start, motos, check);
    }

    public Optional<Moto> moto(MotoId id) {
      return motos.stream().filter(moto -> moto.id().equals(id)).findFirst();
    }

    /** The setup of each moto, in one go. */
    public List<Setup> setups() {
      List<Setup> setups = new ArrayList<>();
      Setup setup = start;
      for (Moto moto : motos) {
        setup = setup.after(moto.changes());
        setups.add(setup);
      }
      return setups;
    }

    /** The setup of a moto, counted from 0: the start and all changes up to it. */
    public Setup setupOf(int moto) {
      Setup setup = start;
      for (int i = 0; i <= moto; i++) {
        setup = setup.after(motos.get(i).changes());
      }
      return setup;
    }

    /** What the bike was left with: the last moto's setup, then what the check found. */
    public Setup end() {
      Setup setup = motos.isEmpty() ? start : setupOf(motos.size() - 1);
      if (check.isPresent()) {
        for (EndOfDayCheck.Found found : check.get().found()) {
          boolean asNoted = setup.reading(found.setting()).map(found.seen()::sameAs).orElse(false);
          if (!asNoted) {
            setup = setup.with(Placed.found(found.setting(), found.seen()));
          }
        }
      }
      return setup;
    }
  }

  /** Changes made between sessions. */
  record Adjusted(Head head, List<Change> changes) implements Entry {
    public Adjusted {
      changes = Checks.unique("change", changes, Change::setting);
    }

    @Override
    public Adjusted with(Head newHead) {
      return new Adjusted(newHead, changes);
    }
  }

  /** Sag of one end: rider aboard and bike alone, and the rider's weight in gear that day. */
  record SagMeasured(
      Head head,
      End end,
      Optional<Amount> race,
      Optional<Amount> free,
      Optional<SagLengths> lengths,
      Optional<Amount> weight,
      Optional<Amount> fuel)
      implements Entry {
    public SagMeasured {
      Checks.dimension("race sag", race, Dimension.LENGTH);
      Checks.dimension("free sag", free, Dimension.LENGTH);
      Checks.positive("weight", weight, Dimension.MASS);
      Checks.dimension("fuel", fuel, Dimension.VOLUME);
      if (race.isEmpty() && free.isEmpty()) {
        throw new NotebookException(Fault.EMPTY, "sag");
      }
    }

    @Override
    public SagMeasured with(Head newHead) {
      return new SagMeasured(newHead, end, race, free, lengths, weight, fuel);
    }
  }

  /** A rebuild under way or ended. */
  record RebuildJob(Head head, Job job, List<StepDone> done, Outcome outcome) implements Entry {
    public RebuildJob {
      done = Checks.unique("step", done, StepDone::step);
    }

    @Override
    public RebuildJob with(Head newHead) {
      return new RebuildJob(newHead, job, done, outcome);
    }

    public Optional<StepDone> done(StepId step) {
      return done.stream().filter(each -> each.step().equals(step)).findFirst();
    }

    /** With a step entered, in place of what was entered there before. */
    public RebuildJob withDone(StepDone step) {
      List<StepDone> next = new ArrayList<>(done);
      next.removeIf(each -> each.step().equals(step.step()));
      next.add(step);
      return new RebuildJob(head, job, next, outcome);
    }

    public RebuildJob withoutDone(StepId step) {
      List<StepDone> next = done.stream().filter(each -> !each.step().equals(step)).toList();
      return new RebuildJob(head, job, next, outcome);
    }

    public RebuildJob ended(Outcome newOutcome) {
      return new RebuildJob(head, job, done, newOutcome);
    }
  }

  /** The setup and sag to return to, from this day on; a later one supersedes it. */
  record Baseline(
      Head head,
      Setup setup,
      Optional<Amount> raceSag,
      Optional<Amount> freeSag,
      String reason,
      Optional<EntryId> rebuild)
      implements Entry {
    public Baseline {
      Checks.dimension("race sag", raceSag, Dimension.LENGTH);
      Checks.dimension("free sag", freeSag, Dimension.LENGTH);
      reason = Checks.note("reason", reason);
    }

    @Override
    public Baseline with(Head newHead) {
      return new Baseline(newHead, setup, raceSag, freeSag, reason, rebuild);
    }
  }

  /** A new or reset hour meter: what the old one read last and the new one reads first. */
  record MeterChange(Head head, Amount oldReads, Amount newReads) implements Entry {
    public MeterChange {
      for (Amount reads : List.of(oldReads, newReads)) {
        Checks.dimension("meter", reads, Dimension.DURATION);
        Checks.range("meter", reads.value().doubleValue(), 0, 100_000);
      }
    }

    @Override
    public MeterChange with(Head newHead) {
      return new MeterChange(newHead, oldReads, newReads);
    }
  }

  /** A crash, a part changed, a fault seen, or the bike checked and found sound. */
  record Event(Head head, EventKind kind, Optional<End> end, Optional<FaultSeen> fault, String what)
      implements Entry {
    public Event {
      what = Checks.note("what", what);
    }

    @Override
    public Event with(Head newHead) {
      return new Event(newHead, kind, end, fault, what);
    }
  }

  /** Service items done, with or without a rebuild in this notebook. */
  record Serviced(Head head, List<ServiceId> items, String by) implements Entry {
    public Serviced {
      items = Checks.unique("service", items, id -> id);
      by = Checks.note("by", by);
    }

    @Override
    public Serviced with(Head newHead) {
      return new Serviced(newHead, items, by);
    }
  }

  /** A gate that the rider waved through, with the reason, which is kept. */
  record GateDismissed(Head head, Gate gate, String reason) implements Entry {
    public GateDismissed {
      reason = Checks.name("reason", reason);
    }

    @Override
    public GateDismissed with(Head newHead) {
      return new GateDismissed(newHead, gate, reason);
    }
  }

  /** A setup handed over: one's own record of it, the base of a later comparison. */
  record HandedOver(Head head, HandOverId handOver, Snapshot snapshot, String sha256)
      implements Entry {
    public HandedOver {
      sha256 = Checks.name("checksum", sha256);
    }

    @Override
    public HandedOver with(Head newHead) {
      return new HandedOver(newHead, handOver, snapshot, sha256);
    }
  }

  /** Proposals, and general advice, from the coach or from the notebook's own reasoning. */
  record Advice(Head head, Source source, List<Proposal> proposals, String general)
      implements Entry {
    public Advice {
      proposals = Checks.unique("proposal", proposals, Proposal::id);
      general = Checks.note("advice", general);
    }

    @Override
    public Advice with(Head newHead) {
      return new Advice(newHead, source, proposals, general);
    }
  }
}
