package rutbook.ui.bike;

import java.util.List;
import java.util.Optional;
import rutbook.notebook.ForkParts;

/** The fork: how it is built, and what follows for its curve. */
final class ForkSection extends Section {
  private final TwoSides sides = new TwoSides();

  ForkSection(BikeDesk desk) {
    super(desk, "fork");
    getChildren().add(sides);
  }

  @Override
  void show(BikeModel model) {
    ForkParts fork = model.sheet().parts().fork();
    String kind = desk().text("fork." + fork.kind().name());
    String more =
        desk()
            .words()
            .joined(
                List.of(
                    fork.travel().map(each -> desk().text("fork.travel.of", each)),
                    fork.sealDiameter().map(each -> desk().text("fork.seal.of", each)),
                    Optional.of(fork.valving())));
    sides.show(
        List.of(
            new TwoSides.Part(
                Optional.of(Rows.heading(desk().text("fork.form"))),
                List.of(
                    new TwoSides.Row(
                        "fork-build",
                        fork,
                        Rows.face(kind, more, ""),
                        desk().text("said", kind, more),
                        () -> new ForkForm(desk(), sides::close))))));
  }
}
