package corewright.profiles;

/**
 * The shop's money for one family, in its own currency: defaults until the shop enters its own.
 *
 * @param sale what a rebuilt unit is sold or invoiced for
 * @param exchange what an exchange unit is sold for
 * @param exchangeCost what an exchange unit costs the shop
 * @param kit parts kit
 * @param labour_h hours of a rebuild
 * @param rate_perHour loaded hourly rate
 * @param test cost of testing and burn-in
 * @param warranty expected warranty cost of a rebuilt unit
 * @param harvest value of a core that cannot be rebuilt
 * @param yield share of started rebuilds that become sellable, 0 to 1
 * @param evaluation evaluation fee
 * @param freight freight and handling of sending a unit back
 */
public record Economics(
    String currency,
    double sale,
    double exchange,
    double exchangeCost,
    double kit,
    double labour_h,
    double rate_perHour,
    double test,
    double warranty,
    double harvest,
    double yield,
    double evaluation,
    double freight) {}
