package rutbook.rebuild;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.Carrier;
import rutbook.notebook.Fastener;
import rutbook.notebook.ForkKind;
import rutbook.notebook.Renewed;
import rutbook.notebook.Role;
import rutbook.notebook.Setting;
import rutbook.notebook.Side;

/** The fork's part of a plan: out, one leg and the other on the bench, in again, axle aligned. */
final class ForkSteps {
  private final Drafting draft;

  ForkSteps(Drafting draft) {
    this.draft = draft;
  }

  /**
   * Pressures noted, then released until the gauge reads 0: nothing is loosened before that. A leg
   * without an air spring traps air as well, which goes out at its bleed screw.
   */
  List<Step> air() {
    List<Step> steps = new ArrayList<>();
    List<Setting> pressures = draft.settings(Role.FORK_AIR);
    pressures.forEach(each -> steps.add(draft.note(StepKind.AIR_NOTE, each)));
    if (!pressures.isEmpty() || kind() == ForkKind.AIR) {
      steps.add(Step.of(StepKind.AIR_RELEASE, Subject.BIKE));
    }
    steps.add(Step.of(StepKind.BLEED_AIR, Subject.BIKE));
    return steps;
  }

  private ForkKind kind() {
    return draft.sheet().parts().fork().kind();
  }

  /** From the stand to both legs assembled and back in the clamps, with the wheel spun. */
  void outAndIn(Chain chain) {
    chain
        .then(Step.of(StepKind.LOOSEN_CAPS, Subject.BIKE))
        .then(Step.of(StepKind.WHEEL_OFF, Subject.BIKE))
        .then(Step.of(StepKind.LEGS_OUT, Subject.BIKE));
    List<Chain> legs = new ArrayList<>();
    for (Side leg : Side.values()) {
      Chain branch = chain.branch();
      bench(branch, leg);
      legs.add(branch);
    }
    chain.joined(legs);
    compareLegs(chain);
    intoTheClamps(chain);
    wheel(chain);
  }

  private void bench(Chain chain, Side leg) {
    chain.then(Step.of(StepKind.STRIP, Subject.of(leg)));
    chain.then(Step.of(StepKind.DRAIN, Subject.of(leg)));
    if (renewed(Renewed.SEALS)) {
      chain.then(Step.of(StepKind.FIT_SEALS, Subject.of(leg)));
    }
    if (renewed(Renewed.VALVING) && damps(leg)) {
      chain.then(Step.of(StepKind.FIT_VALVING, Subject.of(leg)));
    }
    for (Setting spring : draft.settings(Role.FORK_SPRING)) {
      if (Drafting.carries(spring, leg) && draft.isToBePlaced(spring)) {
        chain.then(draft.onLeg(StepKind.FIT_SPRING, StepKind.PLACE_SPRING, spring, leg));
      }
    }
    refill(chain, leg);
    chain.then(
        draft.torqued(
            StepKind.ASSEMBLE,
            Subject.of(leg),
            Fastener.REBOUND_ADJUSTER_LOCK_NUT,
            Fastener.CENTRE_BOLT));
    for (Setting clicker : draft.countable(true)) {
      if (clicker.carrier() != Carrier.SINGLE && Drafting.carries(clicker, leg)) {
        chain.then(draft.total(clicker, Optional.of(leg)));
      }
    }
  }

  private boolean renewed(Renewed what) {
    return draft.job().renewed().contains(what);
  }

  /** Whether a leg has damping in it: on a split-function fork only those that carry a clicker. */
  private boolean damps(Side leg) {
    List<Setting> damping = new ArrayList<>(draft.clickers(true));
    damping.addAll(draft.settings(Role.FORK_CARTRIDGE_OIL));
    return damping.isEmpty() || damping.stream().anyMatch(each -> Drafting.carries(each, leg));
  }

  private void refill(Chain chain, Side leg) {
    List<Setting> cartridges = carried(leg, Role.FORK_CARTRIDGE_OIL);
    List<Setting> outer = carried(leg, Role.FORK_OIL);
    boolean pressurised = kind() == ForkKind.PRESSURISED_CARTRIDGE;
    boolean openBath = cartridges.isEmpty() && !pressurised;
    boolean bled = damps(leg) && (openBath || draft.from().opensCartridge());
    if (bled) {
      cartridges.forEach(
          each -> chain.then(draft.onLeg(StepKind.CARTRIDGE_FILL, StepKind.PLACE_FILL, each, leg)));
    }
    if (outer.isEmpty() || bled && openBath || bled && cartridges.isEmpty()) {
      Goal oil = Goal.NONE.withOil(draft.from().oil());
      chain.then(Step.of(StepKind.POUR, Subject.of(leg)).with(oil));
    }
    if (bled) {
      Step pump = Step.of(StepKind.PUMP_CARTRIDGE, Subject.of(leg));
      StepKind check = pressurised ? StepKind.ROD_RETURNS : StepKind.ROD_EVEN;
      chain.then(pump).then(Step.of(check, Subject.of(leg)).otherwise(pump.id()));
    }
    outer.forEach(each -> chain.then(draft.onLeg(StepKind.FILL, StepKind.PLACE_FILL, each, leg)));
  }

  private List<Setting> carried(Side leg, Role role) {
    return draft.settings(role).stream().filter(each -> Drafting.carries(each, leg)).toList();
  }

  /** With both legs together again: what is in them, one beside the other. */
  private void compareLegs(Chain chain) {
    for (Setting setting : draft.settings(Role.FORK_SPRING)) {
      if (!Drafting.inOneLeg(setting) && draft.isToBePlaced(setting)) {
        chain.then(draft.placing(StepKind.PLACE_SPRING, setting));
      }
    }
    for (Setting setting : draft.settings(Role.FORK_CARTRIDGE_OIL, Role.FORK_OIL)) {
      if (!Drafting.inOneLeg(setting) && draft.from().unsettles(setting)) {
        chain.then(draft.placing(StepKind.PLACE_FILL, setting));
      }
    }
    for (Setting clicker : draft.countable(true)) {
      if (clicker.carrier() == Carrier.SINGLE) {
        chain.then(draft.total(clicker, Optional.empty()));
      }
    }
  }

  private void intoTheClamps(Chain chain) {
    List<Setting> tube = draft.settings(Role.TUBE_ABOVE_CLAMP);
    if (tube.isEmpty()) {
      chain.then(Step.of(StepKind.LEGS_IN, Subject.BIKE));
    }
    tube.forEach(each -> chain.then(draft.placing(StepKind.PLACE_TUBE, each)));
    chain
        .then(draft.torqued(StepKind.CLAMP_LOWER, Subject.BIKE, Fastener.LOWER_CLAMP))
        .then(draft.torqued(StepKind.CAPS, Subject.BIKE, Fastener.FORK_CAP))
        .then(draft.torqued(StepKind.CLAMP_UPPER, Subject.BIKE, Fastener.UPPER_CLAMP));
    draft
        .settings(Role.FORK_AIR)
        .forEach(each -> chain.then(draft.placing(StepKind.PLACE_AIR, each)));
  }

  /** One side's pinch bolts hold the axle, the nut draws it up, the brake centres it. */
  private void wheel(Chain chain) {
    chain
        .then(draft.torqued(StepKind.WHEEL_ON, Subject.BIKE, Fastener.BRAKE_CALIPER))
        .then(Step.of(StepKind.AXLE_IN, Subject.BIKE))
        .then(pinch(StepKind.PINCH_FIRST, draft.sheet().pinchedFirst()))
        .then(draft.torqued(StepKind.AXLE_NUT, Subject.BIKE, Fastener.AXLE_NUT))
        .then(Step.of(StepKind.SPIN, Subject.BIKE));
  }

  /** Off the stand: the floating side finds its place before its bolts hold it. */
  void axle(Chain chain) {
    Optional<Side> floats =
        draft.sheet().pinchedFirst().map(side -> side == Side.LEFT ? Side.RIGHT : Side.LEFT);
    chain
        .then(Step.of(StepKind.COMPRESS, new Subject(Optional.empty(), floats)))
        .then(pinch(StepKind.PINCH_LAST, floats))
        .then(Step.of(StepKind.BRAKE_FIRM, Subject.BIKE));
  }

  private Step pinch(StepKind kind, Optional<Side> side) {
    Step step = draft.torqued(kind, new Subject(Optional.empty(), side), Fastener.AXLE_PINCH_BOLTS);
    return side.isPresent() ? step : step.cautioned(Caution.SIDE_NOT_ON_SHEET);
  }
}
