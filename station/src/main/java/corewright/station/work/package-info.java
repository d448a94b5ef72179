/** The use cases, each written once for every place where people sit. */
package corewright.station.work;
