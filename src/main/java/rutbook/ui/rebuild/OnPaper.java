package rutbook.ui.rebuild;

import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import rutbook.notebook.Entry;
import rutbook.rebuild.Plan;
import rutbook.ui.Desk;
import rutbook.ui.Printing;
import rutbook.ui.controls.Keys;

/** Keys that put the sheets of a rebuild on paper, and what came of it. */
final class OnPaper extends VBox {
  private final Desk desk;
  private final Entry.RebuildJob job;
  private final Plan plan;
  private final FlowPane keys = new FlowPane(8, 8);
  private final Label said = Keys.prose("", "soft");

  OnPaper(Desk desk, Entry.RebuildJob job, Plan plan) {
    super(6);
    this.desk = desk;
    this.job = job;
    this.plan = plan;
    setId("on-paper");
    said.setId("paper-said");
    said.managedProperty().bind(said.textProperty().isNotEmpty());
    getChildren().addAll(keys, said);
  }

  /** With the sheet of every step. */
  OnPaper work() {
    return with("paper-work", "paper.work", new Printing.Sheet.Work(job.bike(), plan));
  }

  /** With the sheet that goes to the shop. */
  OnPaper shop() {
    return with("paper-shop", "paper.shop", new Printing.Sheet.Shop(job.bike(), plan));
  }

  private OnPaper with(String id, String text, Printing.Sheet sheet) {
    Button pdf = Keys.key(id, desk.text(text), () -> print(sheet, Printing.Form.PDF));
    Button html =
        Keys.key(id + "-html", desk.text("paper.html"), () -> print(sheet, Printing.Form.HTML));
    html.setAccessibleText(desk.text(text) + ", " + desk.text("paper.html"));
    keys.getChildren().addAll(pdf, html);
    return this;
  }

  private void print(Printing.Sheet sheet, Printing.Form form) {
    said.setText(desk.text("paper.making"));
    desk.printing().print(desk.notebook(), sheet, form, this::told);
  }

  private void told(Printing.Printed printed) {
    said.getStyleClass().remove("error");
    if (printed instanceof Printing.Printed.Refused refused) {
      said.getStyleClass().add("error");
      said.setText(refused.sentence());
    } else if (printed instanceof Printing.Printed.Shown shown) {
      said.setText(desk.text("paper.shown", shown.path().getFileName()));
    } else if (printed instanceof Printing.Printed.Kept kept) {
      said.setText(desk.text("paper.kept", kept.path().getFileName()));
    }
  }
}
