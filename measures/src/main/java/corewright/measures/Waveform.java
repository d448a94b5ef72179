package corewright.measures;

/**
 * Samples of one channel as integer codes: value = offset + lsb × code. Never changed. A final
 * class and no record: a record cannot protect an array.
 */
public final class Waveform {
  private final CodeStore codes;
  private final double lsb;
  private final double offset;
  private final Unit unit;

  private Waveform(CodeStore codes, double lsb, double offset, Unit unit) {
    this.codes = codes;
    this.lsb = lsb;
    this.offset = offset;
    this.unit = unit;
  }

  /**
   * @param codes as digitised
   * @param lsb value of one code, in {@code unit}, above 0
   * @param offset value of code 0, in {@code unit}
   */
  public static Waveform ofCodes(int[] codes, double lsb, double offset, Unit unit) {
    return ofOwnCodes(codes.clone(), lsb, offset, unit);
  }

  /**
   * The same without a copy, for long records: the caller gives the array away and keeps no hand on
   * it.
   */
  public static Waveform ofOwnCodes(int[] codes, double lsb, double offset, Unit unit) {
    return ofStored(new OnHeap(codes), lsb, offset, unit);
  }

  /** The same for codes that lie elsewhere, for records that are too long for the heap. */
  public static Waveform ofStored(CodeStore codes, double lsb, double offset, Unit unit) {
    if (!(lsb > 0) || !Double.isFinite(lsb) || !Double.isFinite(offset)) {
      throw new IllegalArgumentException("lsb " + lsb + " or offset " + offset + " is not usable");
    }
    return new Waveform(codes, lsb, offset, unit);
  }

  public int size() {
    return codes.size();
  }

  /** Sample {@code i} in {@link #unit}. */
  public double at(int i) {
    return offset + lsb * codes.at(i);
  }

  public int codeAt(int i) {
    return codes.at(i);
  }

  /** Value of one code: the resolution. */
  public double lsb() {
    return lsb;
  }

  public double offset() {
    return offset;
  }

  public Unit unit() {
    return unit;
  }

  private static final class OnHeap implements CodeStore {
    private final int[] codes;

    OnHeap(int[] codes) {
      this.codes = codes;
    }

    @Override
    public int size() {
      return codes.length;
    }

    @Override
    public int at(int i) {
      return codes[i];
    }
  }
}
