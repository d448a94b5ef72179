/** What goes to the customer: certificate, warranty report, label. Reads records, never SQL. */
package corewright.reports.document;
