package corewright.files;

/**
 * Where something stands in a text.
 *
 * @param line counted from 1
 * @param column counted from 1, in characters
 */
public record Place(int line, int column) {}
