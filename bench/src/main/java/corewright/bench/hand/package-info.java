/** What a person does where a shop has no instrument for it. */
package corewright.bench.hand;
