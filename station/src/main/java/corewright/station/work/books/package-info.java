/** A shop's old spreadsheet: read, guessed at, shown, and brought in only when somebody agrees. */
package corewright.station.work.books;
