package rutbook.imports;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import rutbook.imports.ImportException.Fault;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Sheet;
import rutbook.notebook.Side;

/**
 * Which column of a spreadsheet of setups is what.
 *
 * @param columns one for each column of the table
 * @param order of the days; empty where it was not said and is needed
 */
public record SetupMapping(
    List<SetupColumn> columns, Optional<DayOrder> order, DecimalMark decimals) {
  private static final String LEG = ":";

  public SetupMapping {
    columns = List.copyOf(columns);
  }

  static SetupMapping nothing(int columns, DecimalMark decimals) {
    return new SetupMapping(
        Collections.nCopies(columns, new SetupColumn.Nothing()), Optional.empty(), decimals);
  }

  /** The column that is that; empty where none is. */
  public OptionalInt column(SetupColumn wanted) {
    int place = columns.indexOf(wanted);
    return place < 0 ? OptionalInt.empty() : OptionalInt.of(place);
  }

  /** The same with a column meant otherwise; the column that was that is nothing any more. */
  public SetupMapping with(int column, SetupColumn meant) {
    List<SetupColumn> next = new ArrayList<>(columns);
    next.replaceAll(each -> each.equals(meant) ? new SetupColumn.Nothing() : each);
    next.set(column, meant);
    return new SetupMapping(next, order, decimals);
  }

  public SetupMapping with(DayOrder newOrder) {
    return new SetupMapping(columns, Optional.of(newOrder), decimals);
  }

  public SetupMapping with(DecimalMark newDecimals) {
    return new SetupMapping(columns, order, newDecimals);
  }

  /** As it is remembered, and typed: {@code day=1,track=2,fork-rebound:left=4}. */
  public String text() {
    MappingText text = new MappingText();
    for (int i = 0; i < columns.size(); i++) {
      int column = i;
      name(columns.get(i)).ifPresent(name -> text.add(name, column));
    }
    order.ifPresent(it -> text.word("order", it));
    text.word("decimals", decimals);
    return text.toString();
  }

  private static Optional<String> name(SetupColumn column) {
    if (column instanceof SetupColumn.OfSetting of) {
      String leg = of.leg().map(side -> LEG + side.name().toLowerCase(Locale.ROOT)).orElse("");
      return Optional.of(of.setting().text() + leg);
    }
    if (column instanceof SetupColumn.Day) {
      return Optional.of("day");
    }
    if (column instanceof SetupColumn.AtTrack) {
      return Optional.of("track");
    }
    if (column instanceof SetupColumn.Meter) {
      return Optional.of("meter");
    }
    return column instanceof SetupColumn.Note ? Optional.of("note") : Optional.empty();
  }

  /**
   * @param sheet whose settings may be named, by id or name
   * @throws ImportException when it is no mapping of this table
   */
  public static SetupMapping of(String text, Grid grid, Sheet sheet) {
    SetupMapping mapping = nothing(grid.columns(), DecimalMark.of(grid));
    for (MappingText.Part part : MappingText.parts(text)) {
      mapping =
          switch (part.name()) {
            case "order" -> mapping.with(part.word(DayOrder.values()));
            case "decimals" -> mapping.with(part.word(DecimalMark.values()));
            default -> mapping.with(part.column(grid), column(part.name(), sheet));
          };
    }
    return mapping;
  }

  private static SetupColumn column(String name, Sheet sheet) {
    return switch (name) {
      case "day" -> new SetupColumn.Day();
      case "track" -> new SetupColumn.AtTrack();
      case "meter" -> new SetupColumn.Meter();
      case "note" -> new SetupColumn.Note();
      default -> setting(name, sheet);
    };
  }

  private static SetupColumn setting(String name, Sheet sheet) {
    Optional<Side> leg = Optional.empty();
    String plain = name;
    for (Side side : Side.values()) {
      String ending = LEG + side.name().toLowerCase(Locale.ROOT);
      if (name.endsWith(ending)) {
        leg = Optional.of(side);
        plain = name.substring(0, name.length() - ending.length());
      }
    }
    String wanted = plain;
    SettingId id =
        sheet.settings().stream()
            .filter(
                each ->
                    each.id().text().equalsIgnoreCase(wanted)
                        || each.name().equalsIgnoreCase(wanted))
            .map(Setting::id)
            .findFirst()
            .orElseThrow(() -> new ImportException(Fault.BAD_MAPPING, name));
    return new SetupColumn.OfSetting(id, leg);
  }
}
