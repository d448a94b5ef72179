/** Is this paper as we gave it out? Attaches the record to a document, signs it, and checks it. */
package corewright.reports.document.genuine;
