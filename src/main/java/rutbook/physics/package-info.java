/**
 * What springs, air, oil and steering do, as pure functions of SI doubles: metres, newtons,
 * pascals, cubic metres, kelvin, radians. The one exception is kinematic viscosity, in mm²/s,
 * because the standards' formulas are written for it. A number outside a stated range is refused
 * with an {@link IllegalArgumentException} that carries the number; whatever is accepted gives a
 * finite answer.
 */
package rutbook.physics;
