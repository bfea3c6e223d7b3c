package rutbook.ui.next;

import java.util.Optional;
import javafx.geometry.HPos;
import javafx.geometry.VPos;
import javafx.scene.Group;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import rutbook.notebook.Setting;
import rutbook.reasoning.Complaint;
import rutbook.reasoning.Ledger;
import rutbook.reasoning.LedgerRow;
import rutbook.ui.Desk;
import rutbook.ui.controls.Keys;
import rutbook.words.ReasoningWords;

/**
 * All that is known of settings and complaints at one look: a triangle up where more of the setting
 * makes the complaint worse, down where it makes it better, large where it does much, full where it
 * is sure, blue where the rider's own motos speak.
 */
final class LedgerView extends VBox {
  private static final double LEAST = 0.1;
  private final Desk desk;

  LedgerView(Desk desk, Ledger ledger) {
    super(10);
    this.desk = desk;
    setId("ledger");
    getChildren()
        .addAll(
            Keys.label(desk.text("next.known"), "card-title"),
            Keys.prose(desk.text("ledger.legend"), "soft"));
    if (ledger.rows().isEmpty()) {
      getChildren().add(Keys.prose(desk.text("ledger.empty")));
      return;
    }
    getChildren().add(grid(ledger));
  }

  private GridPane grid(Ledger ledger) {
    GridPane grid = new GridPane();
    grid.setHgap(16);
    grid.setVgap(6);
    ReasoningWords words = new ReasoningWords(desk.phrases());
    for (int i = 0; i < ledger.settings().size(); i++) {
      Label head = Keys.label(desk.phrases().safe(ledger.settings().get(i).name()), "grid-head");
      head.setRotate(-90);
      Group upright = new Group(head);
      GridPane.setHalignment(upright, HPos.CENTER);
      GridPane.setValignment(upright, VPos.BOTTOM);
      grid.add(upright, i + 1, 0);
    }
    for (int row = 0; row < ledger.complaints().size(); row++) {
      Complaint complaint = ledger.complaints().get(row);
      Label name = Keys.prose(words.complaint(complaint));
      name.setMinWidth(130);
      grid.add(name, 0, row + 1);
      for (int i = 0; i < ledger.settings().size(); i++) {
        Setting setting = ledger.settings().get(i);
        Optional<LedgerRow> known = ledger.row(complaint, setting);
        if (known.isPresent()) {
          Label cell = cell(known.get(), words);
          GridPane.setHalignment(cell, HPos.CENTER);
          grid.add(cell, i + 1, row + 1);
        }
      }
    }
    return grid;
  }

  private Label cell(LedgerRow row, ReasoningWords words) {
    double size = Math.abs(row.estimate());
    boolean worse = row.estimate() > 0;
    String shape = size < LEAST ? "·" : row.isSure() ? (worse ? "▲" : "▼") : (worse ? "△" : "▽");
    Label cell = Keys.label(shape, row.trials().isEmpty() ? "soft" : "blue");
    cell.setStyle(
        String.format(java.util.Locale.ROOT, "-fx-font-size: %.2fem", 0.8 + Math.min(1.2, size)));
    String said =
        desk.text(
            "ledger.cell",
            desk.phrases().safe(row.setting().name()),
            words.complaint(row.complaint()),
            desk.phrases().amounts().number(row.estimate(), 1),
            desk.phrases().amounts().number(row.byRule(), 1),
            row.cleanTrials(),
            row.mixedTrials());
    cell.setTooltip(new Tooltip(said));
    cell.setAccessibleText(said);
    cell.setFocusTraversable(true);
    return cell;
  }
}
