package corewright.station.web;

import corewright.station.web.live.Glance;

/**
 * What stands round every page.
 *
 * @param shop its name
 * @param here the place that the page belongs to
 * @param who whoever is signed in, with the role in words
 * @param proof what a form must send back to be taken
 * @param mode {@code light} or {@code dark}
 * @param bench the bench that matters most now
 * @param live whether the page drives or watches a bench
 * @param notice what has just been done, a sentence; often empty
 * @param scanned what the last scan did, a sentence; often empty
 */
public record Frame(
    String shop,
    PlaceName here,
    String who,
    String role,
    String proof,
    String mode,
    Glance bench,
    boolean live,
    String notice,
    String scanned) {}
