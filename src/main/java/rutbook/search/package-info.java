/** What all notebooks of a shelf say, found by words: rider, bike, track, day, notes. */
package rutbook.search;
