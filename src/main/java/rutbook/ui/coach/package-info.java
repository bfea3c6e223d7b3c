/** Setups on their way to a coach and back, on both sides. */
package rutbook.ui.coach;
