package rutbook.reasoning;

import java.util.Arrays;
import rutbook.notebook.End;
import rutbook.notebook.ServiceItem;
import rutbook.notebook.ServiceKind;
import rutbook.notebook.Sheet;
import rutbook.notebook.Timeline;

/** Hours that the oil of each end has run at an entry: tired oil lets complaints grow. */
record Wear(double front, double rear) {
  /** Beyond this nobody can say how much more tired oil gets. */
  private static final double MOST = 100;

  /** At each entry of a timeline, in its order; 0 where the meter was never read. */
  static Wear[] ofEach(Timeline timeline, Sheet sheet) {
    double[] front = since(timeline, sheet, ServiceKind.FORK_OIL);
    double[] rear = since(timeline, sheet, ServiceKind.SHOCK_OIL);
    Wear[] wear = new Wear[front.length];
    Arrays.setAll(wear, i -> new Wear(front[i], rear[i]));
    return wear;
  }

  private static double[] since(Timeline timeline, Sheet sheet, ServiceKind kind) {
    double[] least = new double[timeline.entries().size()];
    ServiceItem[] items =
        sheet.services().stream().filter(each -> each.kind() == kind).toArray(ServiceItem[]::new);
    Arrays.fill(least, items.length == 0 ? 0 : MOST);
    for (ServiceItem item : items) {
      double[] hours = timeline.hours().sinceAtEach(item);
      Arrays.setAll(least, i -> Math.min(least[i], hours[i]));
    }
    return least;
  }

  double of(End end) {
    return switch (end) {
      case FRONT -> front;
      case REAR -> rear;
      case WHOLE_BIKE -> Math.max(front, rear);
    };
  }
}
