package rutbook.json;

import java.util.Optional;
import rutbook.notebook.Bite;
import rutbook.notebook.End;
import rutbook.notebook.Feel;
import rutbook.notebook.Section;
import rutbook.notebook.Symptom;
import rutbook.notebook.When;

/** What the bike did, where, and how badly. */
final class FeelShape extends RecordShape<Feel> {
  {
    onOneLine();
  }

  private final Field<End> end = required("end", Words.of(End.class), Feel::end);
  private final Field<Section> section =
      required("section", Words.of(Section.class), Feel::section);
  private final Field<Symptom> symptom =
      required("symptom", Words.of(Symptom.class), Feel::symptom);
  private final Field<Integer> severity = required("severity", Numbers.WHOLE, Feel::severity);
  private final Field<Optional<Bite>> bite = optional("bite", Words.of(Bite.class), Feel::bite);
  private final Field<Optional<When>> when = optional("when", Words.of(When.class), Feel::when);

  @Override
  Feel make(Got got) {
    return new Feel(
        got.get(end),
        got.get(section),
        got.get(symptom),
        got.get(severity),
        got.get(bite),
        got.get(when));
  }
}
