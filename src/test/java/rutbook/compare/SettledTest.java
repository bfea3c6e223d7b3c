package rutbook.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static rutbook.notebook.Bench.clicks;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.Carrier;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Head;
import rutbook.notebook.Moto;
import rutbook.notebook.Notebook;
import rutbook.notebook.Placed;
import rutbook.notebook.Reading;
import rutbook.notebook.ServiceId;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Setup;
import rutbook.notebook.Timeline;
import rutbook.notebook.TrackId;
import rutbook.notebook.WhyUnknown;

/** The columns that two tracks are compared by: values, hours since each oil, place in the day. */
class SettledTest {
  private static final Reading UNKNOWN = Reading.unknown(Carrier.PAIR, WhyUnknown.NOT_NOTED);

  private static Entry.Session at(
      int day, String meter, TrackId track, Setup start, Moto... motos) {
    Entry.Session session = Rides.session(day, track, start, motos);
    return session.with(session.head().withMeter(Optional.of(Bench.hours(meter))));
  }

  private static Entry serviced(int day, String meter, String item) {
    Head head =
        Head.of(new EntryId(item + day), Bench.BIKE, Rides.MAY.plusDays(day), 0)
            .withMeter(Optional.of(Bench.hours(meter)));
    return new Entry.Serviced(head, List.of(new ServiceId(item)), "");
  }

  private static Settled.Points points(Timeline timeline, SettingId id) {
    List<Setting> sheet = timeline.bike().latestSheet().settings();
    Settled settled =
        new Settled(
            TrackSide.of(timeline, Rides.track(Bench.HOLLOW)),
            TrackSide.of(timeline, Rides.track(Bench.DUNE)),
            sheet,
            new WithoutDrift.OilAge(timeline));
    return settled.of(sheet.indexOf(Bench.sheet().setting(id).orElseThrow()));
  }

  private static Setup compression(Reading reading) {
    return Bench.setup().with(Placed.found(Bench.FORK_COMPRESSION, reading));
  }

  /** Fork oil new at 10 and 20 hours, shock oil at 14; read at 12, 16 and 23. */
  @Test
  void hoursRunFromTheOilOfItsOwnEnd() {
    Timeline timeline =
        Rides.timeline(
            serviced(0, "10", "fork-oil"),
            at(1, "12", Bench.DUNE, Bench.setup(), Rides.moto("a")),
            serviced(2, "14", "shock-oil"),
            at(3, "16", Bench.HOLLOW, Bench.setup(), Rides.moto("b")),
            serviced(4, "20", "fork-oil"),
            at(5, "23", Bench.DUNE, Bench.setup(), Rides.moto("c")));
    assertThat(points(timeline, Bench.FORK_COMPRESSION).hours())
        .as("hollow first, then dune")
        .containsExactly(6, 2, 3);
    assertThat(points(timeline, Bench.SHOCK_REBOUND).hours()).containsExactly(2, 12, 9);
    assertThat(points(timeline, Bench.FORK_COMPRESSION).first()).isEqualTo(1);
    assertThat(points(timeline, Bench.FORK_COMPRESSION).hoursVary()).isTrue();
  }

  @Test
  void withoutAServiceOfThatKindNoHoursAreCounted() {
    Timeline served =
        Rides.timeline(
            at(1, "12", Bench.HOLLOW, Bench.setup(), Rides.moto("a")),
            at(2, "15", Bench.DUNE, Bench.setup(), Rides.moto("b")));
    Timeline timeline =
        Timeline.of(
            Notebook.of(
                Bench.notebook().id(),
                Bench.shelf().with(Bench.bike().with(Bench.sheet().withServices(List.of()))),
                served.entries(),
                List.of(),
                Bench.notebook().display()),
            Bench.BIKE);
    assertThat(points(timeline, Bench.FORK_COMPRESSION).hours()).containsExactly(0, 0);
    assertThat(points(timeline, Bench.FORK_COMPRESSION).hoursVary()).isFalse();
    assertThat(points(served, Bench.FORK_COMPRESSION).hours()).containsExactly(12, 15);
  }

  /** The value of a session is that of its best moto, here the last, with the changes up to it. */
  @Test
  void changesOfADayCountUpToItsBestMoto() {
    Moto firmer =
        Rides.changed(Rides.moto("b"), Bench.FORK_COMPRESSION, Reading.bothLegs(clicks(9)));
    Timeline timeline =
        Rides.timeline(
            at(
                1,
                "12",
                Bench.HOLLOW,
                compression(Reading.bothLegs(clicks(12))),
                Rides.moto("a"),
                firmer),
            at(
                2,
                "15",
                Bench.DUNE,
                compression(Reading.of(clicks(10), clicks(13))),
                Rides.moto("c")));
    Settled.Points points = points(timeline, Bench.FORK_COMPRESSION);
    assertThat(points.value()).containsExactly(9, 11.5);
    assertThat(points.order()).containsExactly(1, 0);
    assertThat(points.orderVaries()).isTrue();
    assertThat(points.valueVaries()).isTrue();
    assertThat(points(timeline, Bench.FORK_REBOUND).valueVaries()).isFalse();
  }

  /** Where a setting is not known of a session, that session says nothing of it. */
  @Test
  void aSessionThatDoesNotKnowASettingIsLeftOutForThatSetting() {
    Timeline timeline =
        Rides.timeline(
            at(1, "11", Bench.HOLLOW, compression(UNKNOWN), Rides.moto("a")),
            at(
                2,
                "12",
                Bench.HOLLOW,
                compression(Reading.bothLegs(clicks(12))),
                Rides.moto("b"),
                Rides.moto("c")),
            at(3, "13", Bench.DUNE, compression(Reading.bothLegs(clicks(10))), Rides.moto("d")),
            at(4, "14", Bench.DUNE, compression(UNKNOWN), Rides.moto("e")),
            at(5, "15", Bench.DUNE, compression(Reading.bothLegs(clicks(9))), Rides.moto("f")));
    Settled.Points points = points(timeline, Bench.FORK_COMPRESSION);
    assertThat(points.value()).containsExactly(12, 10, 9);
    assertThat(points.hours()).containsExactly(12, 13, 15);
    assertThat(points.order()).containsExactly(1, 0, 0);
    assertThat(points.size()).isEqualTo(3);
    assertThat(points.ofFirst()).containsExactly(12);
    assertThat(points.ofSecond()).containsExactly(10, 9);
    assertThat(points(timeline, Bench.FORK_REBOUND).size()).isEqualTo(5);
  }

  @Test
  void theOrderInWhichReadingsAreNotedMeansNothing() {
    List<Placed> turned = new ArrayList<>(compression(Reading.bothLegs(clicks(7))).placed());
    Collections.reverse(turned);
    Timeline timeline =
        Rides.timeline(
            at(1, "12", Bench.HOLLOW, new Setup(turned), Rides.moto("a")),
            at(2, "15", Bench.DUNE, Bench.setup(), Rides.moto("b")));
    assertThat(points(timeline, Bench.FORK_COMPRESSION).value()).containsExactly(7, 12);
    assertThat(points(timeline, Bench.SHOCK_REBOUND).value()).containsExactly(12, 12);
  }
}
