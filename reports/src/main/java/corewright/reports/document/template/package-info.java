/** Which sections a document has, in which order, and what the shop says in them. */
package corewright.reports.document.template;
