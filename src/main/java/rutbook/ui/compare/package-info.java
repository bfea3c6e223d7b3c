/** The Compare page: two sides, what differs, and whether it matters. */
package rutbook.ui.compare;
