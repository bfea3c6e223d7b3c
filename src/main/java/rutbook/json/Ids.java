package rutbook.json;

import com.fasterxml.jackson.core.JsonToken;
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
  static final Shape<RiderId> RIDER = shape(RiderId::new);
  static final Shape<BikeId> BIKE = shape(BikeId::new);
  static final Shape<TrackId> TRACK = shape(TrackId::new);
  static final Shape<OilId> OIL = shape(OilId::new);
  static final Shape<SettingId> SETTING = new SettingIds(shape(SettingId::new));
  static final Shape<ChamberId> CHAMBER = shape(ChamberId::new);
  static final Shape<ServiceId> SERVICE = shape(ServiceId::new);
  static final Shape<EntryId> ENTRY = shape(EntryId::new);
  static final Shape<MotoId> MOTO = shape(MotoId::new);
  static final Shape<ProposalId> PROPOSAL = shape(ProposalId::new);
  static final Shape<HandOverId> HAND_OVER = shape(HandOverId::new);
  static final Shape<StepId> STEP = shape(StepId::new);

  private Ids() {}

  /** One object for each id of a setting, however often it stands in a file. */
  record SettingIds(Shape<SettingId> text) implements Shape<SettingId> {
    @Override
    public SettingId read(In in) throws IOException {
      if (in.token() != JsonToken.VALUE_STRING) {
        return text.read(in);
      }
      SettingId known = in.settings().get(in.parser().getText());
      if (known == null) {
        known = text.read(in);
        in.settings().put(known.text(), known);
      }
      return known;
    }

    @Override
    public void write(SettingId value, Out out) throws IOException {
      text.write(value, out);
    }
  }

  private static <T extends Id> Shape<T> shape(Function<String, T> make) {
    return new Texts<>(Expected.ID, make, Id::text);
  }
}
