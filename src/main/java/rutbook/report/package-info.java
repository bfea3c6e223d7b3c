/** The card for people: one template to HTML and PDF, plain text, and sessions as CSV. */
package rutbook.report;
