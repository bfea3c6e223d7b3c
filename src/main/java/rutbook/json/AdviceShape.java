package rutbook.json;

import java.util.List;
import rutbook.notebook.Entry;
import rutbook.notebook.Proposal;
import rutbook.notebook.Source;

/** Proposals and general advice. */
final class AdviceShape extends EntryShape<Entry.Advice> {
  private final Field<Source> source = required("source", new SourceShape(), Entry.Advice::source);
  private final Field<List<Proposal>> proposals =
      list("proposals", new ProposalShape(), Entry.Advice::proposals);
  private final Field<String> general = note("general", Entry.Advice::general);

  AdviceShape() {
    super("advice");
  }

  @Override
  Entry.Advice make(Got got) {
    return new Entry.Advice(head(got), got.get(source), got.get(proposals), got.get(general));
  }
}
