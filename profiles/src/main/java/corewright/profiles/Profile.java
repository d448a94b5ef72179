package corewright.profiles;

import corewright.files.Origin;
import corewright.measures.Unit;
import java.util.List;
import java.util.Optional;

/**
 * A load-hold profile: what the unit shall do, and what it is held against. Read from {@code
 * profiles/families/<family>/<id>.json}.
 *
 * @param id as {@code sd48-arrival}
 * @param purpose which decision rule applies
 * @param sampleRate_Hz per channel
 * @param settle_s not judged after each load edge, s; empty: the meter's default
 * @param guard_s not judged before the next edge, s; empty: the meter's default
 * @param feeds the supply feeds, at least one; each is qualified by its own edges
 * @param supplyDrops the profile itself drops the supply (cranking): a hold then needs no more
 *     input than the lowest {@code input_V} of its steps, and no less
 * @param provingLoad_A a hold counts as loaded from here on; without one there is no verdict
 * @param steps in order
 * @param limits what the readings are held against
 * @param temperature_C nominal temperature of the unit at the start
 * @param temperatureTolerance_K allowed deviation from it
 */
public record Profile(
    String id,
    int revision,
    String family,
    String title,
    Purpose purpose,
    double sampleRate_Hz,
    Optional<Double> settle_s,
    Optional<Double> guard_s,
    List<SupplyFeed> feeds,
    boolean supplyDrops,
    double provingLoad_A,
    List<Step> steps,
    List<Limit> limits,
    double temperature_C,
    double temperatureTolerance_K,
    Origin origin) {

  public Profile {
    feeds = List.copyOf(feeds);
    steps = List.copyOf(steps);
    limits = List.copyOf(limits);
  }

  /** The same with other steps. */
  public Profile withSteps(List<Step> other) {
    return with(sampleRate_Hz, other, limits);
  }

  /** The same with other limits. */
  public Profile withLimits(List<Limit> other) {
    return with(sampleRate_Hz, steps, other);
  }

  /** The same, sampled at another rate. */
  public Profile withSampleRate(double other_Hz) {
    return with(other_Hz, steps, limits);
  }

  private Profile with(double rate_Hz, List<Step> otherSteps, List<Limit> otherLimits) {
    return new Profile(
        id,
        revision,
        family,
        title,
        purpose,
        rate_Hz,
        settle_s,
        guard_s,
        feeds,
        supplyDrops,
        provingLoad_A,
        otherSteps,
        otherLimits,
        temperature_C,
        temperatureTolerance_K,
        origin);
  }

  /** Arrival: simple acceptance. Ship and claim: guard band of U (ILAC-G8). */
  public enum Purpose {
    ARRIVAL,
    SHIP,
    CLAIM
  }

  /** Units of the numbers in a profile, for messages. */
  public static Unit unitOf(Limit limit) {
    return limit.quantity().unit();
  }
}
