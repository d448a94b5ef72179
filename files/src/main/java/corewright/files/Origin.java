package corewright.files;

/**
 * Where a file came from, kept with every run that used it.
 *
 * @param path the file, as given
 * @param sha256 of its bytes, lower-case hex
 * @param text the whole file
 */
public record Origin(String path, String sha256, String text) {}
