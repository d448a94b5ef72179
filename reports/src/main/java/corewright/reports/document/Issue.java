package corewright.reports.document;

/**
 * What makes a page a certificate.
 *
 * @param number of this certificate, on each of its pages
 * @param code of the record it is made from; what {@code verify} prints for a genuine file
 */
record Issue(String number, String code) {}
