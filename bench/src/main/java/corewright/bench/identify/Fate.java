package corewright.bench.identify;

import corewright.profiles.Variant;

/** What a build means for the decision: only a question that can change this is worth asking. */
record Fate(Variant.Serviceable serviceable, String kit) {
  static Fate of(Variant variant) {
    return new Fate(variant.serviceable(), variant.kit());
  }
}
