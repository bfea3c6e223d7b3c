package rutbook.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.Bike;
import rutbook.notebook.Entry;
import rutbook.notebook.MotionRatio;
import rutbook.notebook.Notebook;
import rutbook.notebook.Oil;
import rutbook.notebook.Range;
import rutbook.notebook.RatioConvention;
import rutbook.notebook.Rider;
import rutbook.notebook.ServiceId;
import rutbook.notebook.ServiceItem;
import rutbook.notebook.ShockParts;
import rutbook.notebook.Timeline;
import rutbook.ui.controls.RowKey;
import rutbook.units.Amount;
import rutbook.units.Angle;
import rutbook.units.KinematicViscosity;
import rutbook.units.Mass;
import rutbook.units.Pressure;
import rutbook.units.SpringRate;

/** The forms beside the lists of the Bike page, and what they did to the notebook. */
class BikeFormsTest extends WindowTest {
  @Override
  protected Optional<Notebook> notebook() {
    return Optional.of(Bench.notebook());
  }

  private void open(Place.BikePart part) {
    go(new Place.Bike(part));
  }

  private void row(String id) {
    interact(((RowKey) node(id))::fire);
    settle();
  }

  private void write(String id, String text) {
    interact(() -> ((TextField) node(id)).setText(text));
  }

  private String said(String id) {
    return ((Labeled) node(id)).getText();
  }

  private Bike bike() {
    return editor.present().bikes().get(0);
  }

  private Timeline timeline() {
    return Timeline.of(editor.present(), bike().id());
  }

  private boolean isOpen(String form) {
    return scene().lookup("#" + form) != null;
  }

  @Test
  void aServiceIsAddedCorrectedAndRemoved() {
    open(Place.BikePart.SERVICE);
    touch("service-add");
    write("service-interval", "0");
    touch("service-form-save");
    assertThat(said("service-interval-error")).isNotBlank();
    write("service-interval", "60");
    write("service-name", "Linkage greased");
    touch("service-form-save");
    assertThat(isOpen("service-form")).isFalse();
    List<ServiceItem> services = bike().latestSheet().services();
    assertThat(services).hasSize(3);
    ServiceItem added = services.get(2);
    assertThat(added.name()).isEqualTo("Linkage greased");
    assertThat(added.interval()).isEqualTo(Bench.hours("60"));
    assertThat(added.commonPractice()).as("as the manual says").isFalse();
    row("service-" + added.id());
    write("service-interval", "50");
    touch("service-form-save");
    assertThat(bike().latestSheet().services().get(2).interval()).isEqualTo(Bench.hours("50"));
    row("service-" + added.id());
    touch("service-remove");
    assertThat(bike().latestSheet()).isEqualTo(Bench.sheet());
    row("service-fork-oil");
    write("service-name", " ");
    write("service-interval", "25");
    touch("service-form-save");
    ServiceItem oil = bike().latestSheet().services().get(0);
    assertThat(oil.id()).isEqualTo(new ServiceId("fork-oil"));
    assertThat(oil.name()).as("called what it is").isNotBlank();
    assertThat(oil.interval()).isEqualTo(Bench.hours("25"));
    assertThat(oil.commonPractice()).isTrue();
  }

  @Test
  void whatWasServicedIsNotedWithItsHoursCorrectedAndRemoved() {
    open(Place.BikePart.SERVICE);
    touch("service-done");
    touch("serviced-form-save");
    assertThat(said("serviced-by-error")).isEqualTo("Touch what was done first.");
    touch("serviced-fork-oil");
    write("serviced-meter", "31.5");
    write("serviced-by", "the shop in town");
    touch("serviced-form-save");
    Entry.Serviced serviced = timeline().latest(Entry.Serviced.class).orElseThrow();
    assertThat(serviced.items()).containsExactly(new ServiceId("fork-oil"));
    assertThat(serviced.by()).isEqualTo("the shop in town");
    assertThat(serviced.day()).isEqualTo(TODAY);
    assertThat(serviced.head().meter()).contains(Bench.hours("31.5"));
    assertThat(timeline().hours().since(Bench.services().get(0))).isZero();
    open(Place.BikePart.HISTORY);
    row("history-" + serviced.id());
    touch("serviced-shock-oil");
    write("serviced-day", TODAY.minusDays(3).toString());
    write("serviced-note", "5 wt");
    touch("serviced-form-save");
    Entry.Serviced corrected = timeline().latest(Entry.Serviced.class).orElseThrow();
    assertThat(corrected.id()).isEqualTo(serviced.id());
    assertThat(corrected.items()).hasSize(2);
    assertThat(corrected.day()).isEqualTo(TODAY.minusDays(3));
    assertThat(corrected.head().note()).isEqualTo("5 wt");
    row("history-" + serviced.id());
    touch("serviced-remove");
    assertThat(editor.present()).isEqualTo(Bench.notebook());
  }

  @Test
  void anOilThatGetsThickerAsItWarmsIsRefusedUnderItsField() {
    open(Place.BikePart.OIL);
    touch("oil-add");
    touch("oil-form-save");
    assertThat(said("oil-name-error")).isNotBlank();
    write("oil-name", "Fork 5");
    write("oil-kv40", "16.1");
    write("oil-kv100", "20");
    touch("oil-form-save");
    assertThat(said("oil-kv100-error")).isNotBlank();
    assertThat(editor.present().shelf().oils()).isEmpty();
    write("oil-kv100", "3.8");
    touch("oil-form-save");
    Oil oil = editor.present().shelf().oils().get(0);
    assertThat(oil.name()).isEqualTo("Fork 5");
    assertThat(oil.kv40()).contains(viscosity("16.1"));
    assertThat(oil.kv100()).contains(viscosity("3.8"));
    row("oil-" + oil.id());
    write("oil-kv40", "");
    touch("oil-form-save");
    assertThat(editor.present().shelf().oils())
        .containsExactly(new Oil(oil.id(), "Fork 5", Optional.empty(), oil.kv100()));
  }

  private static Amount viscosity(String number) {
    return Amount.of(number, KinematicViscosity.SQUARE_MILLIMETRE_PER_SECOND);
  }

  @Test
  void aNewWeightHoldsFromItsDayAndTheOldOneStays() {
    open(Place.BikePart.SHOCK);
    row("rider-rider-1");
    write("weight-in-gear", "0");
    touch("weight-form-save");
    assertThat(said("weight-in-gear-error")).isNotBlank();
    write("weight-in-gear", "84.5");
    write("weight-from", TODAY.minusDays(2).toString());
    touch("weight-form-save");
    Rider rider = editor.present().shelf().riders().get(0);
    assertThat(rider.weightOn(TODAY.minusDays(3))).contains(Amount.of("82", Mass.KILOGRAM));
    assertThat(rider.weightOn(TODAY.minusDays(2))).contains(Amount.of("84.5", Mass.KILOGRAM));
    row("rider-rider-1");
    write("weight-name", "Renamed");
    touch("weight-form-save");
    Rider renamed = editor.present().shelf().riders().get(0);
    assertThat(renamed).isEqualTo(new Rider(rider.id(), "Renamed", rider.weights()));
  }

  @Test
  void nameAndReasonAreChangedInOneStep() {
    open(Place.BikePart.SETTINGS);
    touch("change-head");
    write("head-name", "");
    touch("head-form-save");
    assertThat(said("head-name-error")).isNotBlank();
    write("head-name", "Red 250");
    write("head-reason", "as bought");
    press(node("head-reason"), KeyCode.ENTER);
    assertThat(isOpen("head-form")).isFalse();
    assertThat(bike().name()).isEqualTo("Red 250");
    assertThat(bike().latestSheet())
        .isEqualTo(Bench.sheet().with(Bench.sheet().from(), "as bought"));
    interact(editor::undo);
    assertThat(editor.present()).isEqualTo(Bench.notebook());
    touch("change-head");
    write("head-name", "Nothing of it");
    press(node("head-name"), KeyCode.ESCAPE);
    assertThat(isOpen("head-form")).isFalse();
    assertThat(editor.present()).isEqualTo(Bench.notebook());
  }

  @Test
  void theShockIsWrittenDownAsTheManualHasIt() {
    open(Place.BikePart.SHOCK);
    row("shock-build");
    write("shock-ratio", "2,75");
    touch("shock-convention-1");
    write("shock-gas-least", "9.8 bar");
    touch("shock-form-save");
    assertThat(said("shock-gas-most-error"))
        .isEqualTo("A window has two ends: fill in both, or neither.");
    write("shock-gas-most", "10.5 bar");
    write("shock-springs", "51; 54 N/mm; 57");
    write("shock-pitch", "0");
    touch("shock-form-save");
    assertThat(said("shock-pitch-error")).isNotBlank();
    assertThat(bike().latestSheet()).isEqualTo(Bench.sheet());
    write("shock-pitch", "1.75");
    touch("shock-form-save");
    ShockParts shock = bike().latestSheet().parts().shock();
    assertThat(shock.motionRatio())
        .contains(new MotionRatio(new BigDecimal("2.75"), RatioConvention.values()[1]));
    assertThat(shock.gasPressure())
        .contains(new Range(Amount.of("9.8", Pressure.BAR), Amount.of("10.5", Pressure.BAR)));
    assertThat(shock.collarPitch()).contains(Bench.mm("1.75"));
    assertThat(shock.springsAtHand()).containsExactly(rate("51"), rate("54"), rate("57"));
    assertThat(shock.wheelTravel()).contains(Bench.mm("310"));
  }

  private static Amount rate(String number) {
    return Amount.of(number, SpringRate.NEWTON_PER_MILLIMETRE);
  }

  @Test
  void aWindowOfSagHasTwoEndsAndGeometryIsKeptAsTyped() {
    open(Place.BikePart.SHOCK);
    row("sag-windows");
    write("front-race-least", "");
    touch("windows-form-save");
    assertThat(said("front-race-least-error"))
        .isEqualTo("A window has two ends: fill in both, or neither.");
    write("front-race-most", "");
    write("rear-race-most", "110");
    touch("windows-form-save");
    assertThat(bike().latestSheet().parts().sag().frontRace()).isEmpty();
    assertThat(bike().latestSheet().parts().sag().rearRace())
        .contains(new Range(Bench.mm("100"), Bench.mm("110")));
    open(Place.BikePart.STEERING);
    row("geometry");
    write("geometry-rake", "27.2");
    write("geometry-offset", "22");
    touch("geometry-form-save");
    assertThat(bike().latestSheet().parts().geometry().rake())
        .contains(Amount.of("27.2", Angle.DEGREE));
    assertThat(bike().latestSheet().parts().geometry().forkOffset()).contains(Bench.mm("22"));
  }
}
