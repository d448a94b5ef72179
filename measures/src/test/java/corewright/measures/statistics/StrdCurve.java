package corewright.measures.statistics;

import java.util.Map;
import org.apache.commons.math3.analysis.differentiation.DerivativeStructure;

/**
 * The models of NIST's nonlinear datasets, as their files print them. Written once; gradients
 * follow by automatic differentiation.
 */
@FunctionalInterface
interface StrdCurve extends Curve {

  DerivativeStructure model(DerivativeStructure[] b, double x);

  @Override
  default double at(double x, double[] p) {
    return model(variables(p, 0), x).getValue();
  }

  @Override
  default double[] gradient(double x, double[] p) {
    double[] all = model(variables(p, 1), x).getAllDerivatives();
    double[] gradient = new double[p.length];
    System.arraycopy(all, 1, gradient, 0, p.length);
    return gradient;
  }

  private static DerivativeStructure[] variables(double[] p, int order) {
    DerivativeStructure[] b = new DerivativeStructure[p.length];
    for (int i = 0; i < p.length; i++) {
      b[i] = new DerivativeStructure(p.length, order, i, p[i]);
    }
    return b;
  }

  private static DerivativeStructure decay(
      DerivativeStructure a, DerivativeStructure rate, double x) {
    return a.multiply(rate.multiply(-x).exp());
  }

  private static DerivativeStructure bell(
      DerivativeStructure a, DerivativeStructure centre, DerivativeStructure width, double x) {
    return a.multiply(centre.subtract(x).divide(width).pow(2).negate().exp());
  }

  private static DerivativeStructure cubics(DerivativeStructure[] b, double x) {
    return b[0].add(b[1].multiply(x))
        .add(b[2].multiply(x * x))
        .add(b[3].multiply(x * x * x))
        .divide(b[4].multiply(x).add(1).add(b[5].multiply(x * x)).add(b[6].multiply(x * x * x)));
  }

  private static DerivativeStructure cycle(
      DerivativeStructure period, DerivativeStructure c, DerivativeStructure s, double x) {
    DerivativeStructure angle = period.reciprocal().multiply(2 * Math.PI * x);
    return c.multiply(angle.cos()).add(s.multiply(angle.sin()));
  }

  StrdCurve LANCZOS =
      (b, x) -> decay(b[0], b[1], x).add(decay(b[2], b[3], x)).add(decay(b[4], b[5], x));
  StrdCurve GAUSS =
      (b, x) -> decay(b[0], b[1], x).add(bell(b[2], b[3], b[4], x)).add(bell(b[5], b[6], b[7], x));
  StrdCurve CHWIRUT = (b, x) -> b[0].multiply(-x).exp().divide(b[1].add(b[2].multiply(x)));

  Map<String, StrdCurve> ALL =
      Map.ofEntries(
          Map.entry(
              "Bennett5", (b, x) -> b[0].multiply(b[1].add(x).log().divide(b[2]).negate().exp())),
          Map.entry("BoxBOD", (b, x) -> b[0].multiply(b[1].multiply(-x).exp().negate().add(1))),
          Map.entry("Chwirut1", CHWIRUT),
          Map.entry("Chwirut2", CHWIRUT),
          Map.entry("DanWood", (b, x) -> b[0].multiply(b[1].multiply(Math.log(x)).exp())),
          Map.entry(
              "Eckerle4",
              (b, x) ->
                  b[0].divide(b[1])
                      .multiply(b[2].subtract(x).divide(b[1]).pow(2).multiply(-0.5).exp())),
          Map.entry(
              "ENSO",
              (b, x) ->
                  b[0].add(b[1].multiply(Math.cos(2 * Math.PI * x / 12)))
                      .add(b[2].multiply(Math.sin(2 * Math.PI * x / 12)))
                      .add(cycle(b[3], b[4], b[5], x))
                      .add(cycle(b[6], b[7], b[8], x))),
          Map.entry("Gauss1", GAUSS),
          Map.entry("Gauss2", GAUSS),
          Map.entry("Gauss3", GAUSS),
          Map.entry("Hahn1", StrdCurve::cubics),
          Map.entry(
              "Kirby2",
              (b, x) ->
                  b[0].add(b[1].multiply(x))
                      .add(b[2].multiply(x * x))
                      .divide(b[3].multiply(x).add(1).add(b[4].multiply(x * x)))),
          Map.entry("Lanczos1", LANCZOS),
          Map.entry("Lanczos2", LANCZOS),
          Map.entry("Lanczos3", LANCZOS),
          Map.entry(
              "MGH09",
              (b, x) ->
                  b[0].multiply(b[1].multiply(x).add(x * x))
                      .divide(b[2].multiply(x).add(x * x).add(b[3]))),
          Map.entry("MGH10", (b, x) -> b[0].multiply(b[1].divide(b[2].add(x)).exp())),
          Map.entry("MGH17", (b, x) -> b[0].add(decay(b[1], b[3], x)).add(decay(b[2], b[4], x))),
          Map.entry("Misra1a", (b, x) -> b[0].multiply(b[1].multiply(-x).exp().negate().add(1))),
          Map.entry(
              "Misra1b",
              (b, x) -> b[0].multiply(b[1].multiply(x / 2).add(1).pow(-2).negate().add(1))),
          Map.entry(
              "Misra1c",
              (b, x) ->
                  b[0].multiply(b[1].multiply(2 * x).add(1).sqrt().reciprocal().negate().add(1))),
          Map.entry(
              "Misra1d", (b, x) -> b[0].multiply(b[1]).multiply(x).divide(b[1].multiply(x).add(1))),
          Map.entry("Rat42", (b, x) -> b[0].divide(b[1].subtract(b[2].multiply(x)).exp().add(1))),
          Map.entry(
              "Rat43",
              (b, x) ->
                  b[0].divide(
                      b[1].subtract(b[2].multiply(x)).exp().add(1).log().divide(b[3]).exp())),
          Map.entry(
              "Roszman1",
              (b, x) ->
                  b[0].subtract(b[1].multiply(x))
                      .subtract(b[2].divide(b[3].negate().add(x)).atan().divide(Math.PI))),
          Map.entry("Thurber", StrdCurve::cubics));
}
