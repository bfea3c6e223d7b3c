package rutbook.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Head;
import rutbook.notebook.Notebook;
import rutbook.notebook.ServiceId;
import rutbook.notebook.ServiceItem;
import rutbook.notebook.ServiceKind;
import rutbook.notebook.Sheet;
import rutbook.notebook.Timeline;

/** Hours of the oil at each end. */
class WearTest {
  private static Notebook at(Notebook notebook, int day, String meter, String... serviced) {
    Head head =
        Head.of(new EntryId("e" + day), Bench.BIKE, Bench.SPRING.plusDays(day), 0)
            .withMeter(Optional.of(Bench.hours(meter)));
    List<ServiceId> items = new ArrayList<>();
    for (String each : serviced) {
      items.add(new ServiceId(each));
    }
    return notebook.with(new Entry.Serviced(head, items, ""));
  }

  private static Wear[] wear(Notebook notebook, Sheet sheet) {
    return Wear.ofEach(Timeline.of(notebook, Bench.BIKE), sheet);
  }

  @Test
  void hoursRunFromTheOilOfEachEnd() {
    Notebook notebook =
        at(at(at(Bench.notebook(), 1, "10", "fork-oil"), 2, "16", "shock-oil"), 3, "20");
    assertThat(wear(notebook, Bench.sheet()))
        .containsExactly(new Wear(0, 0), new Wear(0, 10), new Wear(6, 0), new Wear(10, 4));
    Wear last = wear(notebook, Bench.sheet())[3];
    assertThat(last.of(End.FRONT)).isEqualTo(10);
    assertThat(last.of(End.REAR)).isEqualTo(4);
    assertThat(last.of(End.WHOLE_BIKE)).as("the older of both").isEqualTo(10);
  }

  @Test
  void nobodyCanSayHowMuchMoreTiredOilGets() {
    Notebook notebook = at(Bench.notebook(), 1, "250");
    assertThat(wear(notebook, Bench.sheet())[1]).isEqualTo(new Wear(100, 100));
    assertThat(wear(notebook, Bench.sheet().withServices(List.of()))[1])
        .as("no oil on the sheet")
        .isEqualTo(new Wear(0, 0));
  }

  @Test
  void ofTwoOilsInOneEndTheFresherCounts() {
    List<ServiceItem> services = new ArrayList<>(Bench.services());
    services.add(
        new ServiceItem(
            new ServiceId("cartridge"),
            "Cartridge",
            End.FRONT,
            ServiceKind.FORK_OIL,
            Bench.hours("50"),
            true));
    Sheet sheet = Bench.sheet().withServices(services);
    Notebook notebook =
        at(at(Bench.notebook().with(Bench.bike().with(sheet)), 1, "10", "cartridge"), 2, "14");
    assertThat(wear(notebook, sheet)[2]).isEqualTo(new Wear(4, 14));
  }
}
