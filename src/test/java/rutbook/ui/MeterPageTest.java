package rutbook.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import javafx.scene.control.TextField;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Entry;
import rutbook.notebook.Hours;
import rutbook.notebook.Notebook;
import rutbook.notebook.ServiceItem;
import rutbook.notebook.Timeline;
import rutbook.samples.Samples;
import rutbook.units.Amount;
import rutbook.units.Duration;

/** A changed or reset hour meter: hours go on counting across it. */
class MeterPageTest extends WindowTest {
  @Override
  protected Optional<Notebook> notebook() {
    return Optional.of(Samples.season());
  }

  private Timeline timeline() {
    return Timeline.of(editor.present(), editor.present().bikes().get(0).id());
  }

  private Hours hours() {
    return timeline().hours();
  }

  private ServiceItem forkOil() {
    return timeline().bike().latestSheet().services().get(0);
  }

  private void write(String id, String text) {
    interact(() -> ((TextField) node(id)).setText(text));
  }

  @Test
  void hoursStayRightAcrossAResetAndComeBackWithUndo() {
    double before = hours().total();
    double sinceOil = hours().since(forkOil());
    go(new Place.Rebuild());
    touch("service-meter");
    assertThat(((TextField) node("meter-old")).getText()).isEqualTo("101.8 h");
    touch("meter-save");
    assertThat(timeline().latest(Entry.MeterChange.class)).isPresent();
    assertThat(hours().total()).isCloseTo(before, within(1e-9));
    assertThat(hours().since(forkOil())).isCloseTo(sinceOil, within(1e-9));
    assertThat(hours().meter()).contains(Amount.of(0, Duration.HOUR));
    assertThat(scene().lookup("#meter-form")).isNull();
    interact(editor::undo);
    assertThat(timeline().latest(Entry.MeterChange.class)).isEmpty();
    assertThat(hours().total()).isCloseTo(before, within(1e-9));
  }

  @Test
  void hoursRunBeforeTheChangeAreAddedWhereTheOldMeterHadGoneOn() {
    double before = hours().total();
    go(new Place.Rebuild());
    touch("service-meter");
    write("meter-old", "103 h");
    write("meter-new", "2 h");
    touch("meter-save");
    assertThat(hours().total()).isCloseTo(before + 1.2, within(1e-9));
  }

  @Test
  void aMeterDoesNotRunBackwards() {
    go(new Place.Rebuild());
    touch("service-meter");
    Notebook before = editor.present();
    write("meter-old", "90 h");
    touch("meter-save");
    assertThat(text("meter-old-error")).contains("101.8 h");
    write("meter-old", "a lot");
    touch("meter-save");
    assertThat(editor.present()).isSameAs(before);
    write("meter-old", "101.8 h");
    write("meter-new", "-3 h");
    touch("meter-save");
    assertThat(editor.present()).isSameAs(before);
  }

  @Test
  void theBikeLeadsToTheSameForm() {
    go(new Place.Bike(Place.BikePart.SERVICE));
    touch("service-meter");
    assertThat(node("rebuild-page")).isNotNull();
    assertThat(node("meter-form")).isNotNull();
  }
}
