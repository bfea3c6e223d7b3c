package rutbook.report;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import rutbook.notebook.Carrier;
import rutbook.notebook.Conditions;
import rutbook.notebook.Entry;
import rutbook.notebook.Feel;
import rutbook.notebook.Lap;
import rutbook.notebook.Moto;
import rutbook.notebook.Rider;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Sheet;
import rutbook.notebook.Shelf;
import rutbook.notebook.Side;
import rutbook.notebook.Timeline;
import rutbook.notebook.Track;
import rutbook.units.Amount;
import rutbook.units.Dimension;
import rutbook.units.Unit;
import rutbook.words.Phrases;

/** Sessions for a spreadsheet: one row for each moto, every setting in its column, RFC 4180. */
public final class SessionsCsv {
  private static final int DECIMALS = 3;

  private final Shelf shelf;
  private final Timeline timeline;
  private final CardOf of;
  private final List<Column> columns = new ArrayList<>();

  private record Ride(Entry.Session session, int number, Moto moto) {}

  private record Column(CsvCell head, Function<Ride, CsvCell> cell) {}

  private SessionsCsv(Shelf shelf, Timeline timeline, Phrases phrases) {
    this.shelf = shelf;
    this.timeline = timeline;
    this.of = new CardOf(shelf, timeline, phrases);
    day();
    ground();
    settings();
    laps();
  }

  /** The file's text, with a head line; sessions without a moto have no row. */
  public static String of(
      Shelf shelf, Timeline timeline, Phrases phrases, List<Entry.Session> sessions) {
    return new SessionsCsv(shelf, timeline, phrases).text(sessions);
  }

  private String text(List<Entry.Session> sessions) {
    StringBuilder text = new StringBuilder();
    text.append(CsvCell.line(columns.stream().map(Column::head).toList()));
    for (Entry.Session session : sessions) {
      for (int i = 0; i < session.motos().size(); i++) {
        Ride ride = new Ride(session, i, session.motos().get(i));
        text.append(
            CsvCell.line(columns.stream().map(column -> column.cell().apply(ride)).toList()));
      }
    }
    return text.toString();
  }

  private void day() {
    column("csv.day", ride -> ride.session().day().toString());
    column("csv.track", ride -> shelf.track(ride.session().track()).map(Track::name).orElse(""));
    column("csv.rider", ride -> shelf.rider(ride.session().rider()).map(Rider::name).orElse(""));
    column("csv.bike", ride -> timeline.bike().name());
    column("csv.moto", ride -> String.valueOf(ride.number() + 1));
    column("csv.trust", ride -> number(ride.moto().report().trust()));
  }

  private void ground() {
    column("csv.ground", ride -> conditions(ride).ground().map(this::name).orElse(""));
    column("csv.moisture", ride -> conditions(ride).moisture().map(this::name).orElse(""));
    column("csv.roughness", ride -> number(conditions(ride).roughness()));
    Unit degrees = of.phrases().display().unit(Dimension.TEMPERATURE);
    amount(of.words().say("csv.air", degrees.symbol()), degrees, ride -> conditions(ride).air());
  }

  private static Conditions conditions(Ride ride) {
    return ride.moto().conditions().orElse(ride.session().conditions());
  }

  /** Every setting of every sheet, in the order in which they came; a leg each where it has two. */
  private void settings() {
    Map<SettingId, Setting> settings = new LinkedHashMap<>();
    for (Sheet sheet : timeline.bike().sheets()) {
      sheet.settings().forEach(setting -> settings.put(setting.id(), setting));
    }
    for (Setting setting : settings.values()) {
      if (setting.carrier() == Carrier.PAIR) {
        for (Side side : Side.values()) {
          String name = of.words().say("csv.setting.leg", setting.name(), side);
          setting(setting, name, side);
        }
      } else {
        setting(setting, of.phrases().safe(setting.name()), Side.LEFT);
      }
    }
  }

  private void setting(Setting setting, String name, Side side) {
    Unit unit = of.phrases().display().unit(setting.dimension());
    amount(
        of.words().say("csv.setting.unit", name, of.phrases().amounts().name(unit)),
        unit,
        ride ->
            ride.session()
                .setupOf(ride.number())
                .reading(setting.id())
                .flatMap(reading -> reading.leg(side).known()));
  }

  private void laps() {
    column("csv.laps", ride -> String.valueOf(counting(ride).size()));
    column(
        "csv.best",
        ride ->
            counting(ride).isEmpty()
                ? ""
                : Numbers.plain(
                    counting(ride).stream().mapToLong(Lap::millis).min().orElseThrow() / 1000.0));
    column(
        "csv.mean",
        ride ->
            counting(ride).isEmpty()
                ? ""
                : Numbers.plain(
                    counting(ride).stream().mapToLong(Lap::millis).average().orElseThrow() / 1000));
    column("csv.feel", ride -> feel(ride.moto()));
    column("csv.note", ride -> ride.moto().note());
  }

  private static List<Lap> counting(Ride ride) {
    return ride.moto().report().laps().stream().filter(Lap::counts).toList();
  }

  private String feel(Moto moto) {
    return moto.report().feel().stream()
        .map(
            (Feel feel) ->
                of.words().say("feel.item", of.comparing().feel(feel.key()), feel.severity()))
        .collect(Collectors.joining("; "));
  }

  private String name(Enum<?> constant) {
    return of.phrases().name(constant);
  }

  private static String number(java.util.OptionalInt number) {
    return number.isPresent() ? String.valueOf(number.getAsInt()) : "";
  }

  private void column(String key, Function<Ride, String> cell) {
    columns.add(
        new Column(CsvCell.text(of.words().say(key)), ride -> CsvCell.text(cell.apply(ride))));
  }

  private void amount(String head, Unit unit, Function<Ride, Optional<Amount>> cell) {
    columns.add(
        new Column(
            CsvCell.text(head),
            ride ->
                CsvCell.number(cell.apply(ride).map(amount -> plain(amount, unit)).orElse(""))));
  }

  private static String plain(Amount amount, Unit unit) {
    java.math.BigDecimal value = amount.in(unit, DECIMALS, RoundingMode.HALF_EVEN).value();
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }
}
