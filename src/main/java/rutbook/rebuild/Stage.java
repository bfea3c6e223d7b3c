package rutbook.rebuild;

import java.util.List;

/** What is done in one go on the way back; a moto is ridden before the next. */
public record Stage(List<ReturnItem> items) {
  public Stage {
    items = List.copyOf(items);
  }
}
