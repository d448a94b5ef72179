/** A shop's own logo: read with care, for it comes from anywhere. */
package corewright.reports.document.logo;
