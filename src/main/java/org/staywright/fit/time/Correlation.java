package org.staywright.fit.time;

/** Squared correlations of some inputs with an outcome. */
final class Correlation {

  private final double[] product;
  private final double[] total;
  private final double[] square;
  private double sum;
  private double squares;
  private int count;

  Correlation(int inputs) {
    product = new double[inputs];
    total = new double[inputs];
    square = new double[inputs];
  }

  void add(double[] input, double outcome) {
    for (int k = 0; k < product.length; k++) {
      product[k] += input[k] * outcome;
      total[k] += input[k];
      square[k] += input[k] * input[k];
    }
    sum += outcome;
    squares += outcome * outcome;
    count++;
  }

  /** Share of the outcome's variance that goes with an input; 0 where one of them does not vary. */
  double squared(int input) {
    double mean = sum / count;
    double inputMean = total[input] / count;
    double variance = squares / count - mean * mean;
    double inputVariance = square[input] / count - inputMean * inputMean;
    if (variance <= 1e-12 * squares / count || inputVariance <= 0) {
      return 0;
    }
    double together = product[input] / count - inputMean * mean;
    return Math.min(1, together * together / (variance * inputVariance));
  }
}
