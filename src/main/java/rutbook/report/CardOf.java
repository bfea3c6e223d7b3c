package rutbook.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.compare.Choice;
import rutbook.compare.Group;
import rutbook.compare.SagKind;
import rutbook.compare.Subject;
import rutbook.drawing.Drawing;
import rutbook.drawing.MarkGlyph;
import rutbook.drawing.RulerDrawing;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.Reading;
import rutbook.notebook.Role;
import rutbook.notebook.Setting;
import rutbook.notebook.Sheet;
import rutbook.notebook.Shelf;
import rutbook.notebook.Timeline;
import rutbook.rebuild.Caution;
import rutbook.words.CardWords;
import rutbook.words.CompareWords;
import rutbook.words.Phrases;
import rutbook.words.PlanWords;

/** What the makers of cards share: the notebook that a card is of, and the words for it. */
final class CardOf {
  private static final double RULER_WIDTH = 232;

  private final Shelf shelf;
  private final Timeline timeline;
  private final Phrases phrases;
  private final CardWords words;
  private final CompareWords comparing;

  CardOf(Shelf shelf, Timeline timeline, Phrases phrases) {
    this.shelf = shelf;
    this.timeline = timeline;
    this.phrases = phrases;
    this.words = new CardWords(phrases);
    this.comparing = new CompareWords(phrases);
  }

  Shelf shelf() {
    return shelf;
  }

  Timeline timeline() {
    return timeline;
  }

  Phrases phrases() {
    return phrases;
  }

  CardWords words() {
    return words;
  }

  CompareWords comparing() {
    return comparing;
  }

  String bike() {
    return phrases.safe(timeline.bike().name());
  }

  /** What the side is, its ground and trust, on one line. */
  String subject(Subject subject) {
    List<String> said = new ArrayList<>();
    said.add(phrases.sentence(comparing.choice(subject.choice())));
    String ground = comparing.conditions(subject.conditions());
    if (!ground.isEmpty()) {
      said.add(ground);
    }
    subject.trust().ifPresent(trust -> said.add(words.say("trust", trust)));
    return String.join(" · ", said);
  }

  /** What the marks mean. */
  Card.Legend legend(MarkGlyph... marks) {
    return new Card.Legend(pictures(marks));
  }

  private List<Card.Picture> pictures(MarkGlyph... marks) {
    List<Card.Picture> pictures = new ArrayList<>();
    for (MarkGlyph mark : marks) {
      pictures.add(picture(mark.drawing(), words.mark(mark)));
    }
    return pictures;
  }

  /**
   * What the marks mean where there are readings.
   *
   * @param reading what a reading is here: set this, on the bike now, as it was left
   */
  Card.Legend legend(String reading, MarkGlyph... marks) {
    List<Card.Picture> pictures = new ArrayList<>();
    pictures.add(picture(MarkGlyph.READING.drawing(), reading));
    pictures.addAll(pictures(marks));
    return new Card.Legend(pictures);
  }

  /** The size of every ruler on a card. */
  RulerDrawing.Size ruler() {
    return RulerDrawing.Size.printed(RULER_WIDTH, phrases.amounts().numerals());
  }

  /** Whether a sag is what a baseline keeps, and nobody measured it. */
  static boolean keeps(Subject subject, End end, SagKind kind) {
    return subject.choice() instanceof Choice.OfBaseline it
        && end == End.REAR
        && (kind == SagKind.RACE ? it.baseline().raceSag() : it.baseline().freeSag()).isPresent();
  }

  static Card.Picture picture(Drawing drawing, String said) {
    return new Card.Picture(drawing, said);
  }

  String group(Group group) {
    return comparing.group(group);
  }

  /** Race and free sag of both ends as far as measured. */
  List<String> sag(Subject subject) {
    List<String> said = new ArrayList<>();
    for (End end : List.of(End.FRONT, End.REAR)) {
      for (SagKind kind : SagKind.values()) {
        subject
            .sag()
            .of(end, kind)
            .ifPresent(
                measured ->
                    said.add(
                        words.sag(
                            end,
                            kind,
                            measured,
                            keeps(subject, end, kind),
                            kind.window(subject.sheet().parts().sag(), end),
                            sagDay(subject, end))));
      }
    }
    return said.isEmpty() ? List.of(words.say("sag.none")) : said;
  }

  /** When the sag that goes with a subject was measured; empty when nobody did. */
  Optional<LocalDate> sagDay(Subject subject, End end) {
    return timeline.sagOn(end, subject.day()).map(Entry.SagMeasured::day);
  }

  /**
   * What is on the bike now of a setting that is counted as this one is; empty when it has none.
   */
  Optional<Reading> now(Setting setting) {
    return timeline
        .bike()
        .latestSheet()
        .setting(setting.id())
        .filter(newest -> newest.scale().datum() == setting.scale().datum())
        .filter(newest -> newest.dimension() == setting.dimension())
        .flatMap(newest -> timeline.now().reading(newest.id()));
  }

  /** What must be read before anybody works on a bike with that sheet. */
  List<String> cautions(Sheet sheet) {
    List<Caution> cautions = new ArrayList<>(List.of(Caution.MANUAL_RULES, Caution.NEVER_FORCE));
    if (has(sheet, Role.FORK_AIR)) {
      cautions.add(Caution.RELEASE_AIR_FIRST);
    }
    cautions.add(Caution.UNDER_LOAD);
    cautions.add(Caution.NEVER_OPEN_GAS);
    cautions.add(Caution.BRAKE_AND_WHEEL);
    cautions.add(Caution.FIRST_RIDE_SLOW);
    PlanWords plan = new PlanWords(phrases);
    return cautions.stream().map(plan::caution).toList();
  }

  private static boolean has(Sheet sheet, Role role) {
    return !sheet.settings(role).isEmpty();
  }

  Optional<String> rider(Entry.Session session) {
    return shelf
        .rider(session.rider())
        .map(
            rider ->
                rider
                    .weightOn(session.day())
                    .map(weight -> words.say("rider", rider.name(), words.both(weight)))
                    .orElseGet(() -> phrases.safe(rider.name())));
  }
}
