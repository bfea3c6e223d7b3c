package rutbook.rebuild;

import java.util.List;

/** What is done in one go on the way back, and whether a moto is ridden before the next. */
public record Stage(List<ReturnItem> items, boolean motoAfter) {
  public Stage {
    items = List.copyOf(items);
  }
}
