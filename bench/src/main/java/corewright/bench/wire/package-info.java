/** Codecs and drivers: what the roles of the port say in bytes. */
package corewright.bench.wire;
