package plainscale.data;

import java.util.List;

/** The curves that can be fitted, with their parameters in order. */
public enum Model {
  /** y = b + m x: intercept b in the unit of y, slope m in the unit of y over that of x. */
  LINE("b", "m") {
    @Override
    double value(double[] p, double x) {
      return p[0] + p[1] * x;
    }

    @Override
    double[] gradient(double[] p, double x) {
      return new double[] {1, x};
    }
  },
  /** y = m x. */
  PROPORTIONAL("m") {
    @Override
    double value(double[] p, double x) {
      return p[0] * x;
    }

    @Override
    double[] gradient(double[] p, double x) {
      return new double[] {x};
    }
  },
  /**
   * y = a (x/x₁)^p, x₁ being one unit of the column of x: a is the value of y there and has its
   * unit, p is a plain number.
   */
  POWER("a", "p") {
    @Override
    double value(double[] p, double x) {
      return p[0] * Math.pow(x, p[1]);
    }

    @Override
    double[] gradient(double[] p, double x) {
      double power = Math.pow(x, p[1]);
      return new double[] {power, x == 0 ? 0 : p[0] * power * Math.log(x)};
    }
  },
  /** y = a e^(b x): a in the unit of y, b in one over the unit of x. */
  EXPONENTIAL("a", "b") {
    @Override
    double value(double[] p, double x) {
      return p[0] * Math.exp(p[1] * x);
    }

    @Override
    double[] gradient(double[] p, double x) {
      double growth = Math.exp(p[1] * x);
      return new double[] {growth, p[0] * x * growth};
    }
  };

  private final List<String> symbols;

  Model(String... symbols) {
    this.symbols = List.of(symbols);
  }

  /** The letters of the parameters. */
  public List<String> symbols() {
    return symbols;
  }

  /** y at x, all in the units of the columns. */
  abstract double value(double[] parameters, double x);

  /** The derivative of y by each parameter. */
  abstract double[] gradient(double[] parameters, double x);
}
