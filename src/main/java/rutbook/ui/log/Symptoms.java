package rutbook.ui.log;

import static rutbook.notebook.Symptom.BEATS_ARMS;
import static rutbook.notebook.Symptom.BOTTOMS;
import static rutbook.notebook.Symptom.BOUNCY;
import static rutbook.notebook.Symptom.DEFLECTS;
import static rutbook.notebook.Symptom.DIVES;
import static rutbook.notebook.Symptom.HARSH;
import static rutbook.notebook.Symptom.HEADSHAKE;
import static rutbook.notebook.Symptom.KICKS;
import static rutbook.notebook.Symptom.NOSE_HEAVY;
import static rutbook.notebook.Symptom.NO_DRIVE;
import static rutbook.notebook.Symptom.PACKS;
import static rutbook.notebook.Symptom.POGOS;
import static rutbook.notebook.Symptom.PUSHES;
import static rutbook.notebook.Symptom.SQUATS;
import static rutbook.notebook.Symptom.SWAPS;
import static rutbook.notebook.Symptom.TUCKS;
import static rutbook.notebook.Symptom.WALLOWS;
import static rutbook.notebook.Symptom.WANDERS;

import java.util.List;
import rutbook.notebook.End;
import rutbook.notebook.Symptom;

/** Which symptoms are offered at an end, the frequent ones first. */
final class Symptoms {
  private static final List<Symptom> FRONT =
      List.of(
          HARSH,
          DIVES,
          DEFLECTS,
          TUCKS,
          PUSHES,
          BOTTOMS,
          PACKS,
          HEADSHAKE,
          POGOS,
          BOUNCY,
          NOSE_HEAVY,
          BEATS_ARMS,
          WANDERS);
  private static final List<Symptom> REAR =
      List.of(
          KICKS, HARSH, SWAPS, PACKS, BOTTOMS, SQUATS, NO_DRIVE, DEFLECTS, POGOS, BOUNCY, WALLOWS);
  private static final List<Symptom> WHOLE =
      List.of(WALLOWS, BOUNCY, HARSH, WANDERS, HEADSHAKE, NOSE_HEAVY, BEATS_ARMS, SWAPS, PUSHES);

  private Symptoms() {}

  static List<Symptom> at(End end) {
    return switch (end) {
      case FRONT -> FRONT;
      case REAR -> REAR;
      case WHOLE_BIKE -> WHOLE;
    };
  }
}
