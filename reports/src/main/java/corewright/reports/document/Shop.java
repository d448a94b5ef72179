package corewright.reports.document;

/**
 * Whose paper it is.
 *
 * @param address one line
 * @param contact telephone or mail, one line; may be empty
 * @param complaints how to object to a result, one sentence
 */
public record Shop(String name, String address, String contact, String complaints) {}
