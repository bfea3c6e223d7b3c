package rutbook.compare;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rutbook.notebook.Change;
import rutbook.notebook.End;
import rutbook.notebook.Placed;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;

/**
 * What the sessions of two tracks came to, as columns of numbers: gone through once, whatever the
 * number of settings.
 */
final class Settled {
  private final List<BestMoto> motos;
  private final int first;
  private final List<Setting> settings;
  private final Reading[][] readings;
  private final double[][] hours;
  private final int[] order;

  /**
   * @param ages hours since its end's oil, for every session
   */
  Settled(TrackSide one, TrackSide other, List<Setting> settings, WithoutDrift.OilAge ages) {
    this.motos =
        java.util.stream.Stream.concat(one.settled().stream(), other.settled().stream()).toList();
    this.first = one.settled().size();
    this.settings = settings;
    this.readings = new Reading[settings.size()][motos.size()];
    this.hours = new double[2][motos.size()];
    this.order = new int[motos.size()];
    Map<SettingId, Integer> places = new HashMap<>();
    for (int i = 0; i < settings.size(); i++) {
      places.put(settings.get(i).id(), i);
    }
    for (int i = 0; i < motos.size(); i++) {
      fold(motos.get(i), i, places);
      order[i] = motos.get(i).moto();
    }
    age(ages, ages.places(one.settled()), 0);
    age(ages, ages.places(other.settled()), first);
  }

  private void age(WithoutDrift.OilAge ages, int[] places, int from) {
    for (int i = 0; i < places.length; i++) {
      hours[0][from + i] = ages.front(places[i]);
      hours[1][from + i] = ages.rear(places[i]);
    }
  }

  private void fold(BestMoto best, int column, Map<SettingId, Integer> places) {
    List<Placed> start = best.session().start().placed();
    for (int i = 0; i < start.size(); i++) {
      put(start.get(i).setting(), i, column, start.get(i).reading(), places);
    }
    for (int moto = 0; moto <= best.moto(); moto++) {
      for (Change change : best.session().motos().get(moto).changes()) {
        put(change.setting(), -1, column, change.to(), places);
      }
    }
  }

  /**
   * @param likely where the setting stands when a setup keeps the order of the sheet
   */
  private void put(
      SettingId id, int likely, int column, Reading reading, Map<SettingId, Integer> places) {
    boolean there = likely >= 0 && likely < settings.size() && settings.get(likely).id().equals(id);
    Integer place = there ? Integer.valueOf(likely) : places.get(id);
    if (place != null) {
      readings[place][column] = reading;
    }
  }

  /** The sessions in which a setting is known. */
  Points of(int place) {
    Setting setting = settings.get(place);
    double[] ages = hours[setting.role().end() == End.FRONT ? 0 : 1];
    double[] value = new double[motos.size()];
    int known = 0;
    Reading before = null;
    double said = Double.NaN;
    for (int i = 0; i < value.length; i++) {
      Reading reading = readings[place][i];
      if (reading != before) {
        said = reading == null ? Double.NaN : Spread.value(setting, reading);
        before = reading;
      }
      value[i] = said;
      known += Double.isNaN(said) ? 0 : 1;
    }
    return known == value.length
        ? new Points(value, ages, order, known, first)
        : known(value, ages, known);
  }

  /** Those of which the setting is known, where it is not known of all. */
  private Points known(double[] all, double[] ages, int known) {
    double[] value = new double[known];
    double[] since = new double[known];
    int[] place = new int[known];
    int ofFirst = 0;
    int at = 0;
    for (int i = 0; i < all.length; i++) {
      if (!Double.isNaN(all[i])) {
        value[at] = all[i];
        since[at] = ages[i];
        place[at++] = order[i];
        ofFirst += i < first ? 1 : 0;
      }
    }
    return new Points(value, since, place, known, ofFirst);
  }

  /**
   * One setting in some sessions: those of the first track, then those of the second.
   *
   * @param value in the unit of its step
   * @param hours since its end's oil
   * @param order of the moto within its day, from 0
   * @param size how many of each there are
   * @param first how many of them are of the first track
   */
  record Points(double[] value, double[] hours, int[] order, int size, int first) {
    boolean isSecond(int i) {
      return i >= first;
    }

    double[] ofFirst() {
      return java.util.Arrays.copyOf(value, first);
    }

    double[] ofSecond() {
      return java.util.Arrays.copyOfRange(value, first, size);
    }

    boolean valueVaries() {
      return varies(value);
    }

    boolean hoursVary() {
      return varies(hours);
    }

    boolean orderVaries() {
      for (int i = 1; i < size; i++) {
        if (order[i] != order[0]) {
          return true;
        }
      }
      return false;
    }

    private boolean varies(double[] numbers) {
      for (int i = 1; i < size; i++) {
        if (numbers[i] != numbers[0]) {
          return true;
        }
      }
      return false;
    }
  }
}
