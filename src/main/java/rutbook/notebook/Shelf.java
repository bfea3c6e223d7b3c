package rutbook.notebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What a notebook knows besides what happened: riders, bikes, tracks and oils. */
public record Shelf(List<Rider> riders, List<Bike> bikes, List<Track> tracks, List<Oil> oils) {
  public static final Shelf EMPTY = new Shelf(List.of(), List.of(), List.of(), List.of());

  public Shelf {
    riders = Checks.unique("rider", riders, Rider::id);
    bikes = Checks.unique("bike", bikes, Bike::id);
    tracks = Checks.unique("track", tracks, Track::id);
    oils = Checks.unique("oil", oils, Oil::id);
  }

  public Optional<Rider> rider(RiderId id) {
    return riders.stream().filter(each -> each.id().equals(id)).findFirst();
  }

  public Optional<Bike> bike(BikeId id) {
    return bikes.stream().filter(each -> each.id().equals(id)).findFirst();
  }

  public Optional<Track> track(TrackId id) {
    return tracks.stream().filter(each -> each.id().equals(id)).findFirst();
  }

  public Optional<Oil> oil(OilId id) {
    return oils.stream().filter(each -> each.id().equals(id)).findFirst();
  }

  public Shelf with(Rider rider) {
    return new Shelf(replaced(riders, rider, Rider::id), bikes, tracks, oils);
  }

  public Shelf with(Bike bike) {
    return new Shelf(riders, replaced(bikes, bike, Bike::id), tracks, oils);
  }

  public Shelf with(Track track) {
    return new Shelf(riders, bikes, replaced(tracks, track, Track::id), oils);
  }

  public Shelf with(Oil oil) {
    return new Shelf(riders, bikes, tracks, replaced(oils, oil, Oil::id));
  }

  private static <T> List<T> replaced(List<T> things, T changed, Function<T, ?> key) {
    List<T> next = new ArrayList<>(things);
    for (int i = 0; i < next.size(); i++) {
      if (key.apply(next.get(i)).equals(key.apply(changed))) {
        next.set(i, changed);
        return next;
      }
    }
    next.add(changed);
    return next;
  }
}
