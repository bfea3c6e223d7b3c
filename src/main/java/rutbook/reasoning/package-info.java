/**
 * What to change next: rules of the trade and the rider's own motos, as facts without sentences.
 */
package rutbook.reasoning;
