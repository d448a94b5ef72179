/** What it did: one run, its sentence, its picture, its findings, and what it is read beside. */
package corewright.station.web.did;
