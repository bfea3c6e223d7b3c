package rutbook.ui;

import java.util.List;
import java.util.Optional;
import org.kordamp.ikonli.Ikon;
import org.kordamp.ikonli.materialdesign2.MaterialDesignA;
import org.kordamp.ikonli.materialdesign2.MaterialDesignB;
import org.kordamp.ikonli.materialdesign2.MaterialDesignC;
import org.kordamp.ikonli.materialdesign2.MaterialDesignM;
import org.kordamp.ikonli.materialdesign2.MaterialDesignT;
import org.kordamp.ikonli.materialdesign2.MaterialDesignW;
import rutbook.notebook.EntryId;
import rutbook.notebook.SettingId;
import rutbook.ui.bike.BikePage;
import rutbook.ui.coach.CoachPage;
import rutbook.ui.coach.GuestPage;
import rutbook.ui.coach.HandOverPage;
import rutbook.ui.coach.TakeBackPage;
import rutbook.ui.compare.ComparePage;
import rutbook.ui.imports.LapsPage;
import rutbook.ui.imports.SetupsPage;
import rutbook.ui.log.LogPage;
import rutbook.ui.log.SessionPage;
import rutbook.ui.next.NextPage;
import rutbook.ui.rebuild.BenchPage;
import rutbook.ui.rebuild.JobPage;
import rutbook.ui.rebuild.PaperPage;
import rutbook.ui.rebuild.RebuildPage;

/** Which page is where: the one list of pages there are. */
final class Pages {
  /** A page on the rail. */
  record OnRail(String name, Ikon icon, Place place) {}

  static final List<OnRail> RAIL =
      List.of(
          new OnRail("log", MaterialDesignB.BOOK_OPEN_OUTLINE, new Place.Log()),
          new OnRail("next", MaterialDesignT.TRENDING_UP, new Place.Next()),
          new OnRail("compare", MaterialDesignC.COMPARE_HORIZONTAL, new Place.Compare()),
          new OnRail("rebuild", MaterialDesignW.WRENCH_OUTLINE, new Place.Rebuild()),
          new OnRail("bike", MaterialDesignM.MOTORBIKE, new Place.Bike(Place.BikePart.SETTINGS)),
          new OnRail("coach", MaterialDesignA.ACCOUNT_VOICE, new Place.Coach()));

  private Pages() {}

  /** The page of a place; empty where the place is no page of its own. */
  static Optional<Page> page(Desk desk, Place place) {
    if (place instanceof Place.Log) {
      return Optional.of(new LogPage(desk));
    }
    if (place instanceof Place.Session session) {
      return Optional.of(new SessionPage(desk, session.session()));
    }
    if (place instanceof Place.Bike bike) {
      return Optional.of(new BikePage(desk, bike.at()));
    }
    if (place instanceof Place.OfSetting of) {
      return Optional.of(ofSetting(desk, of.setting()));
    }
    if (place instanceof Place.Next) {
      return Optional.of(new NextPage(desk));
    }
    if (place instanceof Place.Compare) {
      return Optional.of(new ComparePage(desk));
    }
    if (place instanceof Place.Rebuild) {
      return Optional.of(new RebuildPage(desk));
    }
    if (place instanceof Place.Meter) {
      return Optional.of(new RebuildPage(desk).atMeter());
    }
    if (place instanceof Place.Job job) {
      return Optional.of(new JobPage(desk, job.rebuild()));
    }
    if (place instanceof Place.Paper paper) {
      return Optional.of(new PaperPage(desk, paper.rebuild()));
    }
    if (place instanceof Place.ImportLaps laps) {
      return Optional.of(new LapsPage(desk, laps.session(), laps.moto(), laps.table()));
    }
    if (place instanceof Place.ImportSetups setups) {
      return Optional.of(new SetupsPage(desk, setups.table()));
    }
    if (place instanceof Place.Coach) {
      return Optional.of(new CoachPage(desk));
    }
    if (place instanceof Place.HandOver) {
      return Optional.of(new HandOverPage(desk));
    }
    if (place instanceof Place.TakeBack back) {
      return Optional.of(new TakeBackPage(desk, back.file()));
    }
    if (place instanceof Place.Guest guest) {
      return Optional.of(new GuestPage(desk, guest.file()));
    }
    if (place instanceof Place.Bench bench) {
      return Optional.of(new BenchPage(desk, bench.rebuild(), bench.step()));
    }
    return Optional.empty();
  }

  /** A setting is moved in a session; the latest of the bike shows it. */
  private static Page ofSetting(Desk desk, SettingId setting) {
    Optional<EntryId> latest =
        desk.bike()
            .map(bike -> desk.timeline(bike.id()))
            .flatMap(timeline -> timeline.latest(rutbook.notebook.Entry.Session.class))
            .map(session -> session.id());
    return latest
        .<Page>map(session -> new SessionPage(desk, session).atSetting(setting))
        .orElseGet(() -> new LogPage(desk));
  }

  /** The page that help is about, as its words name it. */
  static String helpName(Place place) {
    if (place instanceof Place.Session || place instanceof Place.OfSetting) {
      return "session";
    }
    if (place instanceof Place.Job) {
      return "job";
    }
    if (place instanceof Place.Paper) {
      return "paper";
    }
    if (place instanceof Place.ImportLaps) {
      return "import-laps";
    }
    if (place instanceof Place.ImportSetups) {
      return "import-setups";
    }
    return place instanceof Place.Bench ? "bench" : railName(place);
  }

  /** The page on the rail that a place belongs to. */
  static String railName(Place place) {
    if (place instanceof Place.Compare) {
      return "compare";
    }
    if (place instanceof Place.Bike) {
      return "bike";
    }
    if (place instanceof Place.Coach
        || place instanceof Place.HandOver
        || place instanceof Place.TakeBack
        || place instanceof Place.Guest) {
      return "coach";
    }
    if (place instanceof Place.Next) {
      return "next";
    }
    if (place instanceof Place.Rebuild
        || place instanceof Place.Job
        || place instanceof Place.Meter
        || place instanceof Place.Paper
        || place instanceof Place.Bench) {
      return "rebuild";
    }
    return place instanceof Place.Log
            || place instanceof Place.Session
            || place instanceof Place.ImportLaps
            || place instanceof Place.ImportSetups
            || place instanceof Place.OfSetting
        ? "log"
        : "";
  }
}
