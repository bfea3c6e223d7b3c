/**
 * A setup on its way to the coach and back: what goes along, what the coach says to it, and how
 * that stands to what is on the bike by then. Values and pure functions; no text, no disk.
 */
package rutbook.share;
