/**
 * Every byte both ways with its time, kept on request, and played back through the drivers to
 * reproduce a problem without the hardware.
 */
package corewright.bench.wirelog;
