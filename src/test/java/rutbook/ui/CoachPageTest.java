package rutbook.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import rutbook.edit.Editor;
import rutbook.edit.EntryEdit;
import rutbook.json.SetupJson;
import rutbook.notebook.Answer;
import rutbook.notebook.Bike;
import rutbook.notebook.Change;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Head;
import rutbook.notebook.Notebook;
import rutbook.notebook.Proposal;
import rutbook.notebook.Reading;
import rutbook.notebook.SettingId;
import rutbook.notebook.Timeline;
import rutbook.samples.Samples;
import rutbook.share.SetupFile;
import rutbook.share.Suggested;
import rutbook.units.Amount;
import rutbook.units.ClickUnit;

/** A setup goes to the coach and comes back, with things going on at both ends meanwhile. */
class CoachPageTest extends WindowTest {
  private static final Notebook SEASON = Samples.season();
  private static final Bike BIKE = SEASON.bikes().get(0);
  private static final LocalDate DAY = CoachPictures.TODAY;
  private static final Path SENT = Path.of("sent.setup.json");
  private static final Path BACK = Path.of("back.setup.json");
  private static final SettingId COMPRESSION = new SettingId("fork-compression");
  private static final SettingId REBOUND = new SettingId("fork-rebound");

  private final InMemory outside = new InMemory();

  @Override
  protected Optional<Notebook> notebook() {
    return Optional.empty();
  }

  @Override
  public void start(Stage first) {
    stage = first;
    open(SEASON);
  }

  @Override
  protected void open(Notebook notebook) {
    editor = new Editor(notebook);
    window = Window.start(stage, StandIns.services(editor, DAY, look(1280, 800), outside));
  }

  private void tick(String id) {
    Node node = node(id);
    interact(() -> ((CheckBox) node).fire());
    settle();
  }

  private void write(String id, String text) {
    interact(
        () -> {
          node(id).requestFocus();
          ((TextInputControl) node(id)).setText(text);
          scene().getRoot().requestFocus();
        });
    settle();
  }

  private Timeline timeline() {
    return Timeline.of(editor.present(), BIKE.id());
  }

  private static Reading now(SettingId id) {
    return Timeline.of(SEASON, BIKE.id()).now().reading(id).orElseThrow();
  }

  private static Amount moved(SettingId id, int clicks) {
    Amount before = now(id).amounts().get(0);
    return before.plus(Amount.of(clicks, ClickUnit.CLICK));
  }

  private void handOver() {
    go(new Place.Coach());
    touch("coach-hand-over");
    outside.picked = Optional.of(SENT);
    touch("hand-over-write");
  }

  private Entry.Advice advice() {
    return timeline().latest(Entry.Advice.class).orElseThrow();
  }

  private Proposal proposal(SettingId id) {
    return advice().proposals().stream()
        .filter(each -> each.setting().equals(id))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aFileOnTheShelfThatCannotBeReadIsNamedWithWhatIsWrong() {
    outside.unread.add(new OutsideFiles.Unread("torn.setup.json", "It ends in line 3."));
    go(new Place.Coach());
    touch("coach-riders");
    assertThat(text("rider-unread-0"))
        .isEqualTo(
            "torn.setup.json on this shelf cannot be read and stays as it is. It ends in line 3.");
  }

  @Test
  void aSetupGoesToTheCoachAndComesBackWhileBothGoOn() {
    handOver();
    assertThat(timeline().latest(Entry.HandedOver.class)).isPresent();
    Notebook riders = editor.present();

    // the coach, in a notebook of their own, opens what was sent and moves two settings
    interact(() -> open(Samples.firstDay()));
    go(new Place.Coach());
    outside.picked = Optional.of(SENT);
    touch("coach-open");
    write("guest-name", "Robin");
    type("guest-fork-compression-field", "22 clicks");
    type("guest-fork-rebound-field", moved(REBOUND, -2).value().toPlainString());
    type("guest-reason-fork-rebound", "It packs in the whoops.");
    write("guest-general", "One change at a time.");
    outside.picked = Optional.of(BACK);
    touch("guest-hand-back");
    assertThat(outside.shelf).hasSize(1);
    go(new Place.Coach());
    touch("coach-riders");
    assertThat(text("rider-open-0")).isEqualTo("Look");

    // the rider has moved one of them meanwhile
    interact(() -> open(riders));
    Change change = Change.of(REBOUND, Reading.bothLegs(moved(REBOUND, 1)));
    Head head = Head.of(new EntryId("meanwhile"), BIKE.id(), DAY, 60);
    interact(() -> editor.make(new EntryEdit.Add(new Entry.Adjusted(head, List.of(change)))));
    Notebook before = editor.present();
    go(new Place.Coach());
    outside.picked = Optional.of(BACK);
    touch("coach-open");
    assertThat(text("take-back-title")).contains("Robin");
    assertThat(text("returned-said-fork-compression")).contains("It stands as you handed it over");
    assertThat(text("returned-said-fork-rebound")).contains("You have moved it since");
    assertThat(editor.present()).as("looking changes nothing").isEqualTo(before);
    touch("take-back-keep");
    assertThat(advice().general()).isEqualTo("One change at a time.");
    touch("decline-fork-rebound");
    touch("word-tried-fork-rebound");
    assertThat(proposal(REBOUND).answer()).isInstanceOf(Answer.Declined.class);
    touch("take-fork-compression");
    Entry.Session after = timeline().latest(Entry.Session.class).orElseThrow();
    assertThat(after.motos().get(after.motos().size() - 1).changes())
        .anyMatch(
            each ->
                each.setting().equals(COMPRESSION)
                    && each.proposal().equals(Optional.of(proposal(COMPRESSION).id())));
    go(new Place.Coach());
    assertThat(
            node("advice-" + advice().id()).lookupAll(".label").stream()
                .map(each -> ((Labeled) each).getText()))
        .as("what was said, and what became of it")
        .anyMatch(each -> each.startsWith("Robin answered"))
        .contains("One change at a time.", "It packs in the whoops.")
        .anyMatch(each -> each.startsWith("Fork compression: "));
    assertThat(text("answer-fork-compression")).isNotBlank();
    assertThat(text("answer-fork-rebound")).isNotBlank();
    interact(editor::undo);
    interact(editor::undo);
    interact(editor::undo);
    assertThat(editor.present()).as("all of it is undone").isEqualTo(before);
  }

  @Test
  void onlyWhatIsTickedIsInTheFileAndThePreviewSaysSo() {
    String place = SEASON.shelf().tracks().get(0).name();
    go(new Place.HandOver());
    Timeline season = Timeline.of(SEASON, BIKE.id());
    Entry.Session latest = season.latest(Entry.Session.class).orElseThrow();
    write("hand-over-search", "");
    tick("setup-session-" + latest.id());
    outside.picked = Optional.of(SENT);
    touch("hand-over-write");
    String track = SEASON.shelf().track(latest.track()).orElseThrow().name();
    assertThat(outside.text(SENT)).doesNotContain(track).doesNotContain("\"laps\"");
    go(new Place.HandOver());
    tick("setup-session-" + latest.id());
    tick("tick-PLACE_NAMES");
    outside.picked = Optional.of(BACK);
    touch("hand-over-write");
    assertThat(outside.text(BACK)).contains(track);
    assertThat(place).isNotBlank();
  }

  @Test
  void aCoachCannotProposeBeyondTheRidersSheet() {
    SetupFile file = CoachPictures.handedOver(SEASON, "h-1", Optional.empty());
    outside.files.put(SENT, SetupJson.write(file));
    go(new Place.Coach());
    interact(() -> open(Samples.firstDay()));
    go(new Place.Guest(CoachPictures.opened(file)));
    type("guest-fork-compression-field", "99");
    assertThat(text("guest-fork-compression-error")).contains("the most is");
    assertThat(outside.shelf.values()).allMatch(each -> each.coach().isEmpty());
  }

  @Test
  void aHostileFileIsASentence() {
    SetupFile answer =
        CoachPictures.advised(CoachPictures.handedOver(SEASON, "h-1", Optional.empty()));
    byte[] good = SetupJson.write(answer);
    String text = new String(good, StandardCharsets.UTF_8);
    List<String> hostile =
        List.of(
            "",
            "not a setup",
            "[".repeat(100_000),
            text.substring(0, text.length() / 2),
            text.replaceFirst("packs", "pecks"),
            text.replaceFirst("\"format\"\\s*:\\s*1", "\"format\": 99"));
    for (String each : hostile) {
      outside.files.put(SENT, each.getBytes(StandardCharsets.UTF_8));
      outside.picked = Optional.of(SENT);
      go(new Place.Coach());
      touch("coach-open");
      assertThat(text("coach-error"))
          .as(each.substring(0, Math.min(40, each.length())))
          .hasSizeGreaterThan(20);
      assertThat(editor.present()).isEqualTo(SEASON);
    }
  }

  @Test
  void anAnswerToAnotherNotebookIsAGuestAndToThisOneWithoutItsRecordASentence() {
    SetupFile answer =
        CoachPictures.advised(CoachPictures.handedOver(SEASON, "h-1", Optional.empty()));
    go(new Place.TakeBack(CoachPictures.opened(answer)));
    assertThat(text("take-back-error")).contains("the entry about it is gone");
    assertThat(editor.present()).isEqualTo(SEASON);
  }

  @Test
  void theShelfIsSearchedAndNamesCannotTurnTheLine() {
    CoachPictures.fill(outside);
    go(new Place.Coach());
    touch("coach-riders");
    write("rider-search", "ada");
    assertThat(scene().lookup("#rider-open-1")).isNull();
    assertThat(
            node("rider-shelf").lookupAll(".card-title").stream()
                .map(each -> ((Labeled) each).getText()))
        .containsExactly("Ada <U+202E>ecnirp");
  }

  @Test
  void theKeyboardAloneIsEnough() {
    SetupFile answer =
        CoachPictures.advised(CoachPictures.handedOver(SEASON, "h-1", Optional.empty()));
    SetupFile file = CoachPictures.handedOver(SEASON, "h-1", Optional.empty());
    interact(() -> open(CoachPictures.recorded(SEASON, file)));
    Suggested first = answer.coach().orElseThrow().proposals().get(0);
    go(new Place.TakeBack(CoachPictures.opened(answer)));
    interact(() -> node("take-back-keep").requestFocus());
    press(node("take-back-keep"), KeyCode.SPACE);
    assertThat(advice().proposals()).hasSize(answer.coach().orElseThrow().proposals().size());
    String decline = "decline-" + first.setting();
    assertThat(node(decline).isFocusTraversable()).isTrue();
    interact(() -> node(decline).requestFocus());
    press(node(decline), KeyCode.SPACE);
    press(scene().getFocusOwner(), KeyCode.SPACE);
    assertThat(proposal(first.setting()).answer()).isInstanceOf(Answer.Declined.class);
    interact(() -> open(Samples.firstDay()));
    go(new Place.Guest(CoachPictures.opened(file)));
    Node ruler = node("guest-fork-compression-ruler");
    interact(ruler::requestFocus);
    press(ruler, KeyCode.LEFT);
    assertThat(outside.shelf.values().iterator().next().coach().orElseThrow().proposal(COMPRESSION))
        .isPresent();
  }
}
