package corewright.measures.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class TypeATest {

  @Test
  void leavesIndependentReadingsAsTheyAre() {
    TypeA a = TypeA.independent(1, 2, 3, 4, 5);
    assertEquals(3, a.mean());
    assertEquals(Math.sqrt(2.5 / 5), a.u(), 1e-15);
    assertEquals(4, a.freedom());
    assertEquals(0, TypeA.independent(7, 7, 7).u());
  }
}
