package rutbook.json;

import rutbook.notebook.HandOverId;
import rutbook.notebook.Source;

/** Who suggested something. */
final class SourceShape extends KindsShape<Source> {
  SourceShape() {
    add(Source.Coach.class, new CoachShape());
    add(Source.Own.class, new OwnShape());
  }

  /** The coach, through a hand-over. */
  private static final class CoachShape extends RecordShape<Source.Coach> {
    {
      kind("coach");
      onOneLine();
    }

    private final Field<HandOverId> handOver =
        required("handOver", Ids.HAND_OVER, Source.Coach::handOver);
    private final Field<String> name = required("name", Texts.TEXT, Source.Coach::name);

    @Override
    Source.Coach make(Got got) {
      return new Source.Coach(got.get(handOver), got.get(name));
    }
  }

  /** The notebook's own reasoning. */
  private static final class OwnShape extends RecordShape<Source.Own> {
    {
      kind("own");
      onOneLine();
    }

    private final Field<String> ruleSet = required("ruleSet", Texts.TEXT, Source.Own::ruleSet);

    @Override
    Source.Own make(Got got) {
      return new Source.Own(got.get(ruleSet));
    }
  }
}
