package rutbook.ui.bike;

import java.util.Optional;
import rutbook.notebook.Geometry;
import rutbook.notebook.Parts;
import rutbook.notebook.Sheet;
import rutbook.ui.controls.AskText;
import rutbook.ui.controls.Keys;
import rutbook.units.Amount;
import rutbook.units.Dimension;

/** Steering geometry as the manual has it, at standard height. */
final class GeometryForm extends SheetForm {
  private final AskText<Optional<Amount>> rake;
  private final AskText<Optional<Amount>> offset;
  private final AskText<Optional<Amount>> front;
  private final AskText<Optional<Amount>> rear;
  private final AskText<Optional<Amount>> wheelbase;

  GeometryForm(BikeDesk desk, Runnable close) {
    super(desk, "geometry-form", desk.text("geometry.form"), close);
    Geometry now = desk.model().sheet().parts().geometry();
    say(Keys.prose(desk.text("geometry.hint"), "soft", "condensed"));
    rake = ask(fields().amount("geometry-rake", "geometry.rake", now.rake(), Dimension.ANGLE));
    offset = ask(length("geometry-offset", "geometry.offset", now.forkOffset()));
    front = ask(length("geometry-front", "geometry.front", now.frontRadius()));
    rear = ask(length("geometry-rear", "geometry.rear", now.rearRadius()));
    wheelbase = wide(length("geometry-wheelbase", "geometry.wheelbase", now.wheelbase()));
  }

  private AskText<Optional<Amount>> length(String id, String label, Optional<Amount> now) {
    return fields().amount(id, label, now, Dimension.LENGTH);
  }

  @Override
  Sheet next(Sheet sheet) {
    Optional<Amount> none = Optional.empty();
    Optional<Amount> angle = take(rake);
    Optional<Amount> clamps = take(offset);
    Optional<Amount> frontWheel = take(front);
    Optional<Amount> rearWheel = take(rear);
    Optional<Amount> base = take(wheelbase);
    blame(rake, () -> new Geometry(angle, none, none, none, none));
    blame(front, () -> new Geometry(none, none, frontWheel, none, none));
    blame(rear, () -> new Geometry(none, none, none, rearWheel, none));
    Geometry next =
        blame(wheelbase, () -> new Geometry(angle, clamps, frontWheel, rearWheel, base));
    Parts parts = sheet.parts();
    return sheet.withParts(new Parts(parts.fork(), parts.shock(), next, parts.sag()));
  }
}
