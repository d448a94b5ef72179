/** A new bench: who answers, what that makes it, whether it is wired well, and its file. */
package corewright.station.work.commission;
