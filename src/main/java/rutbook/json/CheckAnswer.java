package rutbook.json;

import java.util.List;
import rutbook.compare.Finding;
import rutbook.compare.SagKind;
import rutbook.notebook.End;
import rutbook.notebook.ServiceItem;

/** What {@code check} answers: what wants attention, in the order in which it is put right. */
public final class CheckAnswer {
  private record Found(List<Finding> findings) {}

  private static final Facts<ServiceItem> ITEM =
      Facts.line(ServiceItem.class)
          .with("id", Ids.SERVICE, ServiceItem::id)
          .with("name", Texts.TEXT, ServiceItem::name)
          .with("interval", AmountFacts.AMOUNT, ServiceItem::interval)
          .flag("commonPractice", ServiceItem::commonPractice);

  static final FactKinds<Finding> FINDING =
      new FactKinds<Finding>()
          .add(
              Finding.OutsideLimits.class,
              kind(Finding.OutsideLimits.class, "outside-limits")
                  .with("setting", SettingFacts.SETTING, Finding.OutsideLimits::setting)
                  .with("reading", SettingFacts.READING, Finding.OutsideLimits::reading)
                  .with("limits", AmountFacts.LIMITS, Finding.OutsideLimits::limits))
          .add(
              Finding.LegsApart.class,
              kind(Finding.LegsApart.class, "legs-apart")
                  .with("setting", SettingFacts.SETTING, Finding.LegsApart::setting)
                  .with("reading", SettingFacts.READING, Finding.LegsApart::reading))
          .add(
              Finding.NotKnown.class,
              kind(Finding.NotKnown.class, "not-known")
                  .with("setting", SettingFacts.SETTING, Finding.NotKnown::setting)
                  .with("reading", SettingFacts.READING, Finding.NotKnown::reading))
          .add(
              Finding.NoReading.class,
              kind(Finding.NoReading.class, "no-reading")
                  .with("setting", SettingFacts.SETTING, Finding.NoReading::setting))
          .add(
              Finding.BrokenChain.class,
              kind(Finding.BrokenChain.class, "broken-chain")
                  .with("session", Ids.ENTRY, found -> found.at().session().id())
                  .with("day", Texts.DAY, found -> found.at().session().day())
                  .list("settings", SettingFacts.DIFFERENCE, found -> found.at().rows()))
          .add(
              Finding.SagOut.class,
              kind(Finding.SagOut.class, "sag-out")
                  .with("end", Words.of(End.class), Finding.SagOut::end)
                  .with("sag", Words.of(SagKind.class), Finding.SagOut::kind)
                  .with("measured", AmountFacts.AMOUNT, Finding.SagOut::measured)
                  .with("window", AmountFacts.LIMITS, Finding.SagOut::window)
                  .with("day", Texts.DAY, Finding.SagOut::day))
          .add(
              Finding.SagNotMeasured.class,
              kind(Finding.SagNotMeasured.class, "sag-not-measured")
                  .with("end", Words.of(End.class), Finding.SagNotMeasured::end)
                  .with("sag", Words.of(SagKind.class), Finding.SagNotMeasured::kind))
          .add(
              Finding.ServiceDue.class,
              kind(Finding.ServiceDue.class, "service-due")
                  .with("service", ITEM, Finding.ServiceDue::item)
                  .with("hours", Numbers.FIGURE, Finding.ServiceDue::hours)
                  .flag("everDone", Finding.ServiceDue::everDone))
          .add(
              Finding.ServiceNear.class,
              kind(Finding.ServiceNear.class, "service-near")
                  .with("service", ITEM, Finding.ServiceNear::item)
                  .with("hours", Numbers.FIGURE, Finding.ServiceNear::hours));

  private static final Facts<Found> FOUND =
      Facts.of(Found.class).list("findings", FINDING, Found::findings);

  private CheckAnswer() {}

  public static Reply of(List<Finding> findings) {
    return Reply.of("check", FOUND, new Found(findings));
  }

  private static <T extends Finding> Facts<T> kind(Class<T> type, String word) {
    return Facts.of(type).word("kind", word).flag("problem", Finding::isProblem);
  }
}
