package rutbook.rebuild;

import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;

/**
 * The kinds of step in the order in which a bench takes them where nothing else decides: where it
 * is done, how long it takes, what ends it, what must be said, what must lie ready.
 */
public enum StepKind {
  HOURS(Place.FLOOR, 1, DoneWhen.ENTERED, say(), Tool.HOUR_METER),
  AIR_NOTE(Place.FLOOR, 1, DoneWhen.ENTERED, say(), Tool.AIR_GAUGE),
  AIR_RELEASE(
      Place.FLOOR,
      2,
      DoneWhen.GAUGE_READS_ZERO,
      say(Caution.RELEASE_AIR_FIRST, Caution.MANUAL_RULES),
      Tool.AIR_GAUGE),
  BLEED_AIR(
      Place.FLOOR,
      1,
      DoneWhen.NOTHING_HISSES,
      say(Caution.RELEASE_AIR_FIRST, Caution.MANUAL_RULES),
      Tool.SCREWDRIVER),
  COUNT(Place.FLOOR, 2, DoneWhen.COUNTED_EVERY_LEG, say(Caution.NEVER_FORCE), Tool.SCREWDRIVER),
  NOTE_PRELOAD(Place.FLOOR, 3, DoneWhen.ENTERED, say(), Tool.CALLIPER),
  NOTE_INSTALLED_LENGTH(Place.FLOOR, 2, DoneWhen.ENTERED, say(), Tool.CALLIPER),
  BACK_OUT(
      Place.FLOOR, 2, DoneWhen.ADJUSTERS_AT_LAST_CLICK, say(Caution.NEVER_FORCE), Tool.SCREWDRIVER),
  STAND(Place.STAND, 3, DoneWhen.TICKED, say(Caution.STABLE_STAND), Tool.BIKE_STAND),
  SHOCK_OFF(
      Place.STAND,
      20,
      DoneWhen.TICKED,
      say(Caution.STABLE_STAND, Caution.NEVER_OPEN_GAS),
      Tool.WRENCHES),
  NOTE_FREE_LENGTH(
      Place.STAND,
      5,
      DoneWhen.ENTERED,
      say(Caution.UNDER_LOAD, Caution.NEVER_OPEN_GAS),
      Tool.CALLIPER),
  SHOP_SHEET(Place.STAND, 5, DoneWhen.TICKED, say(Caution.NEVER_OPEN_GAS, Caution.LICENSED_FIRST)),
  LOOSEN_CAPS(Place.STAND, 5, DoneWhen.TICKED, say(Caution.UNDER_LOAD), Tool.CAP_WRENCH),
  WHEEL_OFF(Place.STAND, 10, DoneWhen.TICKED, say(Caution.STABLE_STAND), Tool.WRENCHES),
  LEGS_OUT(Place.STAND, 5, DoneWhen.TICKED, say(Caution.STABLE_STAND), Tool.WRENCHES),
  STRIP(Place.BENCH, 15, DoneWhen.TICKED, say(Caution.UNDER_LOAD), Tool.CAP_WRENCH),
  DRAIN(Place.BENCH, 10, DoneWhen.NO_MORE_BUBBLES, say(), Tool.DRAIN_PAN),
  FIT_SEALS(Place.BENCH, 15, DoneWhen.TICKED, say(Caution.MANUAL_RULES), Tool.SEAL_DRIVER),
  FIT_VALVING(Place.BENCH, 30, DoneWhen.TICKED, say(Caution.MANUAL_RULES), Tool.WRENCHES),
  FIT_SPRING(Place.BENCH, 5, DoneWhen.ENTERED, say(Caution.UNDER_LOAD)),
  CARTRIDGE_FILL(
      Place.BENCH, 5, DoneWhen.INSIDE_LIMITS, say(Caution.MANUAL_RULES), Tool.MEASURING_CUP),
  POUR(Place.BENCH, 3, DoneWhen.TICKED, say(), Tool.MEASURING_CUP),
  PUMP_CARTRIDGE(Place.BENCH, 8, DoneWhen.NO_MORE_BUBBLES, say()),
  ROD_RETURNS(Place.BENCH, 1, DoneWhen.ROD_RETURNS_BY_ITSELF, say()),
  ROD_EVEN(Place.BENCH, 1, DoneWhen.EVEN_RESISTANCE, say()),
  FILL(
      Place.BENCH,
      5,
      DoneWhen.INSIDE_LIMITS,
      say(Caution.MANUAL_RULES),
      Tool.RING_GAUGE,
      Tool.MEASURING_CUP),
  ASSEMBLE(
      Place.BENCH,
      15,
      DoneWhen.TO_TORQUE,
      say(Caution.MANUAL_RULES, Caution.UNDER_LOAD),
      Tool.TORQUE_WRENCH),
  TOTAL(Place.BENCH, 2, DoneWhen.TOTAL_AS_ON_SHEET, say(Caution.NEVER_FORCE), Tool.SCREWDRIVER),
  PLACE_SPRING(Place.BENCH, 1, DoneWhen.AT_TARGET, say()),
  PLACE_FILL(Place.BENCH, 1, DoneWhen.LEGS_EQUAL, say(Caution.MANUAL_RULES)),
  NEW_SHEET(Place.BENCH, 5, DoneWhen.TICKED, say()),
  PLACE_TUBE(Place.STAND, 5, DoneWhen.AT_TARGET, say(Caution.MANUAL_RULES), Tool.CALLIPER),
  LEGS_IN(Place.STAND, 5, DoneWhen.TICKED, say(Caution.MANUAL_RULES)),
  CLAMP_LOWER(Place.STAND, 3, DoneWhen.TO_TORQUE, say(Caution.MANUAL_RULES), Tool.TORQUE_WRENCH),
  CAPS(Place.STAND, 3, DoneWhen.TO_TORQUE, say(Caution.MANUAL_RULES), Tool.TORQUE_WRENCH),
  CLAMP_UPPER(Place.STAND, 3, DoneWhen.TO_TORQUE, say(Caution.MANUAL_RULES), Tool.TORQUE_WRENCH),
  PLACE_AIR(Place.STAND, 3, DoneWhen.AT_TARGET, say(Caution.MANUAL_RULES), Tool.AIR_GAUGE),
  WHEEL_ON(Place.STAND, 10, DoneWhen.TO_TORQUE, say(Caution.MANUAL_RULES), Tool.TORQUE_WRENCH),
  AXLE_IN(Place.STAND, 3, DoneWhen.TICKED, say()),
  PINCH_FIRST(Place.STAND, 2, DoneWhen.TO_TORQUE, say(Caution.MANUAL_RULES), Tool.TORQUE_WRENCH),
  AXLE_NUT(Place.STAND, 2, DoneWhen.TO_TORQUE, say(Caution.MANUAL_RULES), Tool.TORQUE_WRENCH),
  SPIN(Place.STAND, 1, DoneWhen.WHEEL_STOPPED_BY_BRAKE, say(Caution.BRAKE_AND_WHEEL)),
  COMPRESS(Place.FLOOR, 1, DoneWhen.FORK_MOVES_FREELY, say()),
  PINCH_LAST(Place.FLOOR, 2, DoneWhen.TO_TORQUE, say(Caution.MANUAL_RULES), Tool.TORQUE_WRENCH),
  BRAKE_FIRM(Place.FLOOR, 2, DoneWhen.LEVER_FIRM_WHEEL_FREE, say(Caution.BRAKE_AND_WHEEL)),
  SHOP_RETURN(Place.SHOP, 10, DoneWhen.SHOP_GAVE_IT_BACK, say(Caution.NEVER_OPEN_GAS)),
  SHOP_GAS(Place.SHOP, 1, DoneWhen.ENTERED, say(Caution.NEVER_OPEN_GAS, Caution.MANUAL_RULES)),
  SHOP_FOUND(Place.SHOP, 2, DoneWhen.ENTERED, say(), Tool.SCREWDRIVER),
  LINKAGE(Place.STAND, 20, DoneWhen.TICKED, say(Caution.STABLE_STAND), Tool.GREASE),
  SHOCK_IN(
      Place.STAND,
      20,
      DoneWhen.TO_TORQUE,
      say(Caution.MANUAL_RULES, Caution.STABLE_STAND),
      Tool.TORQUE_WRENCH),
  PLACE_AXLE(Place.FLOOR, 5, DoneWhen.AT_TARGET, say(Caution.MANUAL_RULES), Tool.CALLIPER),
  CHAIN(Place.FLOOR, 5, DoneWhen.TICKED, say(Caution.MANUAL_RULES), Tool.TAPE_MEASURE),
  PLACE_TYRE(Place.FLOOR, 2, DoneWhen.AT_TARGET, say(), Tool.TYRE_GAUGE),
  PLACE_PRELOAD(Place.FLOOR, 10, DoneWhen.AT_TARGET, say(Caution.UNDER_LOAD), Tool.WRENCHES),
  RACE_SAG(Place.FLOOR, 5, DoneWhen.SAG_AS_AT_BASELINE, say(), Tool.TAPE_MEASURE),
  FREE_SAG(Place.FLOOR, 3, DoneWhen.SAG_AS_AT_BASELINE, say(), Tool.TAPE_MEASURE),
  FRONT_RACE_SAG(Place.FLOOR, 5, DoneWhen.ENTERED, say(), Tool.TAPE_MEASURE),
  PLACE_CLICKER(Place.FLOOR, 2, DoneWhen.AT_TARGET, say(Caution.NEVER_FORCE), Tool.SCREWDRIVER),
  PLACE_OTHER(Place.FLOOR, 5, DoneWhen.AT_TARGET, say(Caution.MANUAL_RULES)),
  SHAKE_DOWN(
      Place.RIDE,
      15,
      DoneWhen.RIDDEN,
      say(Caution.BRAKE_AND_WHEEL, Caution.FIRST_RIDE_SLOW, Caution.ENDS_THE_RIDE)),
  RECHECK(
      Place.RIDE,
      10,
      DoneWhen.NOTHING_LEAKS_OR_IS_LOOSE,
      say(Caution.ENDS_THE_RIDE, Caution.MANUAL_RULES),
      Tool.TORQUE_WRENCH),
  CONFIRM_MOTO(Place.RIDE, 20, DoneWhen.RIDDEN, say(Caution.ONE_THING)),
  CONFIRM(Place.RIDE, 5, DoneWhen.VERDICT_SAYS_BACK, say(Caution.ONE_THING));

  private final Place place;
  private final int minutes;
  private final DoneWhen doneWhen;
  private final List<Caution> cautions;
  private final List<Tool> tools;

  StepKind(Place place, int minutes, DoneWhen doneWhen, List<Caution> cautions, Tool... tools) {
    this.place = place;
    this.minutes = minutes;
    this.doneWhen = doneWhen;
    this.cautions = cautions;
    this.tools = List.of(tools);
  }

  private static List<Caution> say(Caution... cautions) {
    return List.of(cautions);
  }

  public Place place() {
    return place;
  }

  /** How long it takes a rider who has done it before; common practice, no source. */
  public int minutes() {
    return minutes;
  }

  /** Minutes to let it stand before it is done; common practice, no source. */
  public OptionalInt waitMinutes() {
    return switch (this) {
      case DRAIN -> OptionalInt.of(10);
      case PUMP_CARTRIDGE -> OptionalInt.of(5);
      default -> OptionalInt.empty();
    };
  }

  public DoneWhen doneWhen() {
    return doneWhen;
  }

  public List<Caution> cautions() {
    return cautions;
  }

  public List<Tool> tools() {
    return tools;
  }

  /** Whether a step of this kind leaves a setting where it belongs. */
  public boolean places() {
    return name().startsWith("PLACE_");
  }

  /**
   * Whether what is entered at a step of this kind was found, before tear-down or as the shop left
   * it: it is kept and flagged beyond a limit, where what is chosen is refused.
   */
  public boolean finds() {
    return compareTo(STAND) <= 0 || this == SHOP_FOUND || this == SHOP_GAS;
  }

  /** The kind in the id of a step, which is kept in notebooks: never change a name here. */
  String slug() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
