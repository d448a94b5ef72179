/** The system of record: every step of a visit is an event here. */
package corewright.reports.ledger;
