package rutbook.ui.bike;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import rutbook.notebook.Carrier;
import rutbook.notebook.Chamber;
import rutbook.notebook.Datum;
import rutbook.notebook.Limits;
import rutbook.notebook.Range;
import rutbook.notebook.Role;
import rutbook.notebook.Scale;
import rutbook.notebook.Sense;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Sheet;
import rutbook.notebook.Work;
import rutbook.ui.controls.AskOne;
import rutbook.ui.controls.AskText;
import rutbook.ui.controls.Keys;
import rutbook.units.Amount;
import rutbook.units.Dimension;
import rutbook.units.Unit;

/**
 * A setting of the sheet: its stops or fill, its count, its leg, and what a greater number does.
 */
final class SettingForm extends SheetForm {
  private static final List<Dimension> KINDS =
      List.of(
          Dimension.CLICKS,
          Dimension.TURNS,
          Dimension.LENGTH,
          Dimension.SPRING_RATE,
          Dimension.PRESSURE);

  private static final int MOST_TOTAL = 1000;

  private final Optional<Setting> before;
  private final SettingId id;
  private final CommonPractice usual;
  private final AskText<String> name;
  private final AskOne<Carrier> carrier;
  private final Optional<AskOne<Dimension>> kind;
  private final StopsPart stops;
  private final FillPart fill;
  private final AskText<Amount> step;
  private final AskOne<Datum> datum;
  private final AskOne<Sense> greater;
  private final AskText<Optional<Integer>> total;
  private final AskText<Optional<Amount>> wishLeast;
  private final AskText<Optional<Amount>> wishMost;
  private final AskOne<Role> role;
  private final AskOne<Work> work;

  /**
   * @param setting the one to change; empty for a new one
   * @param offered the role of a new one
   * @param adjust puts the setting itself to something else, instead of its stops
   */
  SettingForm(
      BikeDesk desk,
      Optional<Setting> setting,
      Role offered,
      Consumer<Setting> adjust,
      Runnable close) {
    super(
        desk,
        "setting-form",
        setting.map(Setting::name).orElseGet(() -> desk.text("setting.new")),
        close);
    before = setting;
    id = setting.map(Setting::id).orElseGet(() -> new SettingId(desk.desk().ids().next()));
    usual = CommonPractice.of(offered, desk.desk().notebook().display());
    Optional<Scale> scale = setting.map(Setting::scale);
    Optional<Chamber> chamber = setting.flatMap(desk.model().sheet()::chamber);
    boolean isFill = setting.isPresent() ? chamber.isPresent() : CommonPractice.isFill(offered);
    Amount stepNow = scale.map(Scale::step).orElse(usual.step());
    setting.ifPresent(
        each ->
            say(Keys.key("setting-adjust", desk.text("adjust.key"), () -> adjust.accept(each))));
    name =
        wide(
            fields()
                .line(
                    "setting-name",
                    "setting.name",
                    setting.map(Setting::name).orElseGet(() -> desk.words().name(offered))));
    carrier =
        wide(
            new AskOne<>(
                "setting-carrier",
                desk.text("setting.carrier"),
                Arrays.asList(Carrier.values()),
                setting.map(Setting::carrier).orElse(usual.carrier()),
                each -> desk.text("carrier." + each.name())));
    kind =
        isFill
            ? Optional.empty()
            : Optional.of(
                wide(
                    new AskOne<>(
                        "setting-kind",
                        desk.text("setting.kind"),
                        KINDS,
                        stepNow.dimension(),
                        desk.words()::name)));
    Optional<Range> limits =
        setting.isPresent() ? setting.map(desk.model().sheet()::limits) : usual.range();
    stops = isFill ? null : new StopsPart(this, limits, this::unit);
    fill = isFill ? new FillPart(this, chamber) : null;
    if (setting.isEmpty() && !isFill) {
      say(Keys.prose(desk.text("setting.common"), "soft", "condensed"));
    }
    step = ask(fields().amountIn("setting-step", "setting.step", Optional.of(stepNow), this::unit));
    total =
        ask(
            fields()
                .whole(
                    "setting-total",
                    "setting.total",
                    scale
                        .map(Scale::total)
                        .filter(OptionalInt::isPresent)
                        .map(OptionalInt::getAsInt)));
    datum =
        wide(
            one(
                "setting-datum",
                "setting.datum",
                Datum.values(),
                scale.map(Scale::datum).orElse(usual.datum())));
    greater =
        ask(
            one(
                "setting-greater",
                "setting.greater",
                Sense.values(),
                scale.map(Scale::greater).orElse(usual.greater())));
    role = wide(one("setting-role", "setting.role", Role.values(), offered));
    wishLeast =
        ask(
            fields()
                .maybeIn(
                    "setting-wish-least",
                    "setting.wish.least",
                    scale.flatMap(Scale::wish).map(Range::least),
                    this::unit));
    wishMost =
        ask(
            fields()
                .maybeIn(
                    "setting-wish-most",
                    "setting.wish.most",
                    scale.flatMap(Scale::wish).map(Range::most),
                    this::unit));
    work =
        wide(
            one(
                "setting-work",
                "setting.work",
                Work.values(),
                setting.map(Setting::work).orElse(usual.work())));
    if (setting.isPresent()) {
      key("setting-remove", desk.text("setting.remove"), this::remove);
    }
  }

  private <E extends Enum<E>> AskOne<E> one(String askId, String label, E[] values, E now) {
    return new AskOne<>(
        askId, desk().text(label), Arrays.asList(values), now, desk().words()::name);
  }

  /** What a bare number is counted in. */
  private Unit unit() {
    if (fill != null) {
      return fill.unit();
    }
    Unit written = before.map(each -> each.scale().step().unit()).orElse(usual.step().unit());
    Dimension chosen = kind.map(AskOne::read).orElse(written.dimension());
    return written.dimension() == chosen
        ? written
        : desk().desk().notebook().display().unit(chosen);
  }

  @Override
  Sheet next(Sheet sheet) {
    return next(sheet, id);
  }

  /** What is counted in another way from a day on is another setting from that day on. */
  @Override
  Sheet renewed(Sheet sheet) {
    boolean other = SheetChange.between(sheet, next(sheet, id)).contains(SheetChange.MEANING);
    return other ? next(sheet, new SettingId(desk().desk().ids().next())) : next(sheet, id);
  }

  private Sheet next(Sheet sheet, SettingId newId) {
    Optional<Chamber> chamber = Optional.ofNullable(fill).map(part -> part.read(take(carrier)));
    Limits limits =
        chamber
            .<Limits>map(each -> new Limits.Fill(each.id()))
            .orElseGet(() -> new Limits.Stops(stops.read()));
    Setting next = setting(newId, limits);
    return blame(step, () -> SettingOnSheet.put(sheet, before.map(Setting::id), next, chamber));
  }

  private Setting setting(SettingId newId, Limits limits) {
    Amount stepNow = take(step);
    Optional<Range> wish = wish();
    OptionalInt stopToStop = take(total).map(OptionalInt::of).orElse(OptionalInt.empty());
    take(total)
        .filter(count -> count < 1 || count > MOST_TOTAL)
        .ifPresent(
            count -> {
              throw new Refused(total, desk().text("setting.total.range", count, MOST_TOTAL));
            });
    Scale scale =
        blame(step, () -> new Scale(limits, wish, stepNow, take(datum), take(greater), stopToStop));
    return blame(
        name, () -> new Setting(newId, take(name), take(role), take(carrier), scale, take(work)));
  }

  private Optional<Range> wish() {
    Optional<Amount> least = take(wishLeast);
    Optional<Amount> most = take(wishMost);
    if (least.isEmpty() && most.isEmpty()) {
      return Optional.empty();
    }
    if (least.isEmpty() || most.isEmpty()) {
      throw new Refused(least.isEmpty() ? wishLeast : wishMost, desk().text("setting.wish.both"));
    }
    return Optional.of(blame(wishMost, () -> new Range(least.get(), most.get())));
  }

  private void remove() {
    Sheet sheet = desk().model().sheet();
    put(
        sheet.withSettings(
            sheet.settings().stream().filter(each -> !each.id().equals(id)).toList()));
  }
}
