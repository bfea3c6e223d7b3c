package rutbook.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rutbook.notebook.Placed;
import rutbook.notebook.Reading;
import rutbook.notebook.Role;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Side;
import rutbook.physics.Atmosphere;
import rutbook.physics.Room;
import rutbook.units.Amount;
import rutbook.units.Volume;

/**
 * The air that a fill leaves in a leg at full stroke, and what follows: a fork without it locks on
 * its oil before it bottoms.
 *
 * @param airAtExtension trapped at full extension, mL
 * @param airAtFullStroke left at full stroke, mL; zero or less is hydraulic lock
 * @param compression how many times the air is compressed; empty when it locks
 * @param roomForOil the extra oil that still keeps the margin ({@link Room#MOST_RATIO} times), mL;
 *     negative when there is already too much
 * @param measured whether the leg's volume was measured; an estimate never overrules the manual
 */
public record FillRoom(
    Side leg,
    Amount airAtExtension,
    Amount airAtFullStroke,
    OptionalDouble compression,
    Amount roomForOil,
    boolean measured,
    Verdict verdict) {

  /** What follows from the room. */
  public enum Verdict {
    FREE,
    /** Less than the margin by an estimate: said, not refused. */
    WARNED,
    /** Less than the margin by a measured volume. */
    REFUSED
  }

  /** The room in each leg that holds oil or is pumped; a leg of a split fork may do neither. */
  public static Figure<List<FillRoom>> of(Sheet sheet, Setup setup) {
    Inputs inputs = new Inputs();
    List<FillRoom> rooms = new ArrayList<>();
    for (Side side : Side.values()) {
      LegFill.read(inputs, sheet, setup, side, Atmosphere.SEA_LEVEL)
          .ifPresent(leg -> rooms.add(of(leg)));
    }
    return inputs.figure(() -> List.copyOf(rooms));
  }

  /**
   * The room that a fill would leave, asked where it is typed or planned. Empty when the setting is
   * no fill of a fork's spring air, or the bike's data do not allow an answer: then only the limits
   * of the chamber bind.
   */
  public static List<FillRoom> planned(Sheet sheet, SettingId fill, Reading reading) {
    Optional<Setting> setting = sheet.setting(fill);
    if (setting.isEmpty() || setting.get().role() != Role.FORK_OIL) {
      return List.of();
    }
    Setup setup = new Setup(List.of(Placed.found(fill, reading)));
    List<FillRoom> rooms = new ArrayList<>();
    for (Side side : Side.values()) {
      if (Inputs.serving(sheet, Role.FORK_OIL, side).equals(setting)) {
        LegFill.read(new Inputs(), sheet, setup, side, Atmosphere.SEA_LEVEL)
            .ifPresent(leg -> rooms.add(of(leg)));
      }
    }
    return List.copyOf(rooms);
  }

  private static FillRoom of(LegFill leg) {
    Room room = leg.air().room();
    return new FillRoom(
        leg.side(),
        millilitres(room.startVolume()),
        millilitres(room.endVolume()),
        room.locked()
            ? OptionalDouble.empty()
            : OptionalDouble.of(room.startVolume() / room.endVolume()),
        millilitres(room.roomForOil()),
        leg.measured(),
        verdict(room, leg.measured()));
  }

  private static Verdict verdict(Room room, boolean measured) {
    if (!room.tight()) {
      return Verdict.FREE;
    }
    return measured ? Verdict.REFUSED : Verdict.WARNED;
  }

  private static Amount millilitres(double cubicMetres) {
    return Si.amount(cubicMetres, Volume.MILLILITRE, 0);
  }
}
