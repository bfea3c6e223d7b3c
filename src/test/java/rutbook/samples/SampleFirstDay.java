package rutbook.samples;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import rutbook.notebook.Bench;
import rutbook.notebook.Bike;
import rutbook.notebook.BikeId;
import rutbook.notebook.Conditions;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Feel;
import rutbook.notebook.Ground;
import rutbook.notebook.Head;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoId;
import rutbook.notebook.MotoKind;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookId;
import rutbook.notebook.Report;
import rutbook.notebook.Rider;
import rutbook.notebook.RiderId;
import rutbook.notebook.Section;
import rutbook.notebook.Shelf;
import rutbook.notebook.Symptom;
import rutbook.notebook.Track;
import rutbook.notebook.TrackId;
import rutbook.notebook.TravelUsed;
import rutbook.units.Amount;
import rutbook.units.Display;
import rutbook.units.Mass;

/** A notebook on its first day: a bike, a baseline, one session with one moto. */
final class SampleFirstDay {
  private static final LocalDate DAY = LocalDate.of(2026, 5, 2);
  private static final BikeId BIKE = new BikeId("corvane-250");

  private SampleFirstDay() {}

  static Notebook make() {
    Rider rider =
        new Rider(
            new RiderId("jorin"),
            "Jorin Hask",
            List.of(new Rider.Weight(DAY, Amount.of("77", Mass.KILOGRAM))));
    Track track =
        new Track(
            new TrackId("mill-meadow"),
            "Mill Meadow",
            Optional.of(Ground.GRASS),
            Optional.empty(),
            "");
    Bike bike = new Bike(BIKE, "Corvane 250", List.of(SampleBike.sheet(DAY)));
    Entry.Baseline baseline =
        new Entry.Baseline(
            head("e-001", 0, "12.4"),
            SampleBike.firstSetup(),
            Optional.of(Bench.mm("104")),
            Optional.of(Bench.mm("33")),
            "as the service manual says",
            Optional.empty());
    return Notebook.of(
        new NotebookId("sample-first-day"),
        new Shelf(List.of(rider), List.of(bike), List.of(track), List.of()),
        List.of(baseline, session(rider, track)),
        List.of(),
        Display.METRIC);
  }

  private static Head head(String id, int order, String meter) {
    return Head.of(new EntryId(id), BIKE, DAY, order).withMeter(Optional.of(Bench.hours(meter)));
  }

  private static Entry.Session session(Rider rider, Track track) {
    Report report =
        new Report(
            List.of(),
            OptionalInt.of(6),
            List.of(
                Feel.of(End.FRONT, Section.BRAKING_BUMPS, Symptom.HARSH, 3),
                Feel.of(End.REAR, Section.CORNER_EXIT, Symptom.SQUATS, 0)),
            TravelUsed.NOT_NOTED,
            false);
    Moto moto = new Moto(new MotoId("m-1"), MotoKind.MOTO, List.of(), report, Optional.empty(), "");
    return new Entry.Session(
        head("e-002", 1, "13.1"),
        track.id(),
        rider.id(),
        new Conditions(
            Optional.of(Ground.GRASS),
            Optional.empty(),
            OptionalInt.of(2),
            Optional.empty(),
            Set.of()),
        SampleBike.firstSetup(),
        List.of(moto),
        Optional.empty());
  }
}
