package rutbook.json;

import rutbook.notebook.End;
import rutbook.notebook.ServiceId;
import rutbook.notebook.ServiceItem;
import rutbook.notebook.ServiceKind;
import rutbook.units.Amount;

/** Something done on hours. */
final class ServiceItemShape extends RecordShape<ServiceItem> {
  {
    onOneLine();
  }

  private final Field<ServiceId> id = required("id", Ids.SERVICE, ServiceItem::id);
  private final Field<String> name = required("name", Texts.TEXT, ServiceItem::name);
  private final Field<End> end = required("end", Words.of(End.class), ServiceItem::end);
  private final Field<ServiceKind> kind =
      required("kind", Words.of(ServiceKind.class), ServiceItem::kind);
  private final Field<Amount> interval =
      required("interval", AmountShape.AMOUNT, ServiceItem::interval);
  private final Field<Boolean> commonPractice =
      usually(false, "commonPractice", Numbers.YES_OR_NO, ServiceItem::commonPractice);

  @Override
  ServiceItem make(Got got) {
    return new ServiceItem(
        got.get(id),
        got.get(name),
        got.get(end),
        got.get(kind),
        got.get(interval),
        got.get(commonPractice));
  }
}
