package rutbook.offenders.units;

import javafx.geometry.Point2D;

/** JavaFX outside ui and app. */
record DrawsOnTheScreen(Point2D place) {}
