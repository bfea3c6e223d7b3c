package rutbook.json;

import java.io.IOException;
import java.util.function.Function;
import rutbook.json.JsonFault.Expected;
import rutbook.notebook.BikeId;
import rutbook.notebook.ChamberId;
import rutbook.notebook.EntryId;
import rutbook.notebook.HandOverId;
import rutbook.notebook.Id;
import rutbook.notebook.MotoId;
import rutbook.notebook.NotebookId;
import rutbook.notebook.OilId;
import rutbook.notebook.ProposalId;
import rutbook.notebook.RiderId;
import rutbook.notebook.ServiceId;
import rutbook.notebook.SettingId;
import rutbook.notebook.StepId;
import rutbook.notebook.TrackId;

/** Every kind of id is its text. */
final class Ids {
  static final Shape<NotebookId> NOTEBOOK = shape(NotebookId::new);
  static final Shape<RiderId> RIDER = repeated(RiderId::new);
  static final Shape<BikeId> BIKE = repeated(BikeId::new);
  static final Shape<TrackId> TRACK = repeated(TrackId::new);
  static final Shape<OilId> OIL = shape(OilId::new);
  static final Shape<SettingId> SETTING = repeated(SettingId::new);
  static final Shape<ChamberId> CHAMBER = shape(ChamberId::new);
  static final Shape<ServiceId> SERVICE = shape(ServiceId::new);
  static final Shape<EntryId> ENTRY = shape(EntryId::new);
  static final Shape<MotoId> MOTO = shape(MotoId::new);
  static final Shape<ProposalId> PROPOSAL = shape(ProposalId::new);
  static final Shape<HandOverId> HAND_OVER = shape(HandOverId::new);
  static final Shape<StepId> STEP = shape(StepId::new);

  private Ids() {}

  /** Of ids that stand in a file again and again there is one object each. */
  record Repeated<T extends Id>(Shape<T> each, Repeats.Making<T> made) implements Shape<T> {
    Repeated(Shape<T> each) {
      this(each, (in, text) -> each.read(in));
    }

    @Override
    public T read(In in) throws IOException {
      return in.repeated(made, Expected.ID);
    }

    @Override
    public void write(T value, Out out) throws IOException {
      each.write(value, out);
    }
  }

  private static <T extends Id> Shape<T> repeated(Function<String, T> make) {
    return new Repeated<>(shape(make));
  }

  private static <T extends Id> Shape<T> shape(Function<String, T> make) {
    return new Texts<>(Expected.ID, make, Id::text);
  }
}
