/** What differs between two setups, sessions or tracks, and what of a bike does not fit: facts. */
package rutbook.compare;
