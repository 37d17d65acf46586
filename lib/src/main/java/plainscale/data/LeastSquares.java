package plainscale.data;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularMatrixException;

/**
 * The solution of {@code design × β ≈ y} by QR decomposition, which unlike the normal equations
 * does not square the condition of the problem.
 *
 * @param solution β
 * @param factor a matrix F with F Fᵀ = (designᵀ design)⁻¹: the covariance of β for residuals of
 *     variance one
 * @param residuals y less design × β
 */
record LeastSquares(RealVector solution, RealMatrix factor, RealVector residuals) {

  /** Solves; columns that depend on one another give a {@link DataException}. */
  static LeastSquares solve(double[][] rows, double[] y) {
    RealMatrix design = new Array2DRowRealMatrix(rows, false);
    RealVector right = new ArrayRealVector(y, false);
    QRDecomposition qr = new QRDecomposition(design);
    int parameters = design.getColumnDimension();
    try {
      RealVector solution = qr.getSolver().solve(right);
      RealMatrix triangle = qr.getR().getSubMatrix(0, parameters - 1, 0, parameters - 1);
      RealMatrix identity = MatrixUtils.createRealIdentityMatrix(parameters);
      RealMatrix factor = new QRDecomposition(triangle).getSolver().solve(identity);
      return new LeastSquares(solution, factor, right.subtract(design.operate(solution)));
    } catch (SingularMatrixException e) {
      throw new DataException("These points do not determine the curve.");
    }
  }
}
