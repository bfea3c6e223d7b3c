package rutbook.reasoning;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rutbook.notebook.Change;
import rutbook.notebook.Placed;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Setup;

/** Setups as doses from the baseline, worked out once for all complaints; 0 where not known. */
final class RideDoses {
  private final List<Setting> settings;
  private final Map<SettingId, Integer> place = new HashMap<>();
  private final double[] baseline;

  RideDoses(List<Setting> settings, Setup baseline) {
    this.settings = settings;
    for (int j = 0; j < settings.size(); j++) {
      place.put(settings.get(j).id(), j);
    }
    this.baseline = plain(baseline);
  }

  private double[] plain(Setup setup) {
    double[] x = new double[settings.size()];
    java.util.Arrays.fill(x, Double.NaN);
    for (Placed placed : setup.placed()) {
      set(x, placed.setting(), placed.reading());
    }
    return x;
  }

  private void set(double[] x, SettingId id, Reading reading) {
    Integer j = place.get(id);
    if (j != null) {
      Optional<Double> doses = Doses.of(settings.get(j), reading);
      x[j] = doses.orElse(Double.NaN);
    }
  }

  private double[] away(double[] plain) {
    double[] x = new double[plain.length];
    for (int j = 0; j < x.length; j++) {
      double off = plain[j] - baseline[j];
      x[j] = Double.isNaN(off) ? 0 : off;
    }
    return x;
  }

  double[] of(Setup setup) {
    return away(plain(setup));
  }

  /** Of every ride; only what was changed is worked out again within a session. */
  double[][] of(List<Ride> rides) {
    double[][] x = new double[rides.size()][];
    double[] plain = null;
    for (int i = 0; i < x.length; i++) {
      Ride ride = rides.get(i);
      boolean follows =
          i > 0
              && rides.get(i - 1).day() == ride.day()
              && rides.get(i - 1).order() + 1 == ride.order();
      if (follows) {
        plain = plain.clone();
        for (Change change : ride.moto().changes()) {
          set(plain, change.setting(), change.to());
        }
      } else {
        plain = plain(ride.setup());
      }
      x[i] = away(plain);
    }
    return x;
  }
}
