/** House rules: what the shop holds to, who may do what, and how its record is kept. */
package corewright.station.web.rules;
