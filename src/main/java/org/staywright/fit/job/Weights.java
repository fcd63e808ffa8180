package org.staywright.fit.job;

/**
 * Shares of the balanced score; they add up to 1.
 *
 * @param effort of the hand
 * @param margin to the requirements
 * @param landing at the open stop
 * @param price of the set
 * @param supply time until it is here
 */
public record Weights(double effort, double margin, double landing, double price, double supply) {

  public static final Weights BALANCED = new Weights(0.4, 0.25, 0.1, 0.15, 0.1);

  /** Shares of any weights that are not all nothing. */
  public static Weights of(
      double effort, double margin, double landing, double price, double supply) {
    double all = effort + margin + landing + price + supply;
    return new Weights(effort / all, margin / all, landing / all, price / all, supply / all);
  }
}
