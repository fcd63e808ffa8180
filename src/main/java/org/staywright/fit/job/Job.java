package org.staywright.fit.job;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.staywright.mechanism.Mechanism;
import org.staywright.mechanism.Mounts;
import org.staywright.motion.Drag;
import org.staywright.part.Coded;
import org.staywright.part.Family;
import org.staywright.part.Finish;
import org.staywright.part.FittingType;

/**
 * One thing to be held or moved, and what is asked of the springs. SI.
 *
 * @param name as the user calls it
 * @param mechanism load and geometry
 * @param springCounts numbers of equal springs to consider
 * @param rodEnd wish for the rod's end fitting
 * @param tubeEnd wish for the tube's end fitting
 * @param conditions of service
 * @param requirements to meet
 * @param filters on the range
 * @param rankBy order of what fits
 * @param limit most rows returned of each list
 * @param weights of the balanced order
 * @param beside parts already chosen that act along: dampers, further springs
 */
public record Job(
    String name,
    Mechanism mechanism,
    List<Integer> springCounts,
    FittingWish rodEnd,
    FittingWish tubeEnd,
    Conditions conditions,
    Requirements requirements,
    Filters filters,
    RankBy rankBy,
    int limit,
    Weights weights,
    List<Beside> beside) {

  public Job {
    springCounts = List.copyOf(springCounts);
    beside = List.copyOf(beside);
  }

  /** Numbers of springs that are judged: under a seat stands one column. */
  public List<Integer> counts() {
    return mechanism.handMoves() ? springCounts : List.of(1);
  }

  /** With the usual weights and nothing beside the springs. */
  public Job(
      String name,
      Mechanism mechanism,
      List<Integer> springCounts,
      FittingWish rodEnd,
      FittingWish tubeEnd,
      Conditions conditions,
      Requirements requirements,
      Filters filters,
      RankBy rankBy,
      int limit) {
    this(
        name,
        mechanism,
        springCounts,
        rodEnd,
        tubeEnd,
        conditions,
        requirements,
        filters,
        rankBy,
        limit,
        Weights.BALANCED,
        List.of());
  }

  /** The same job with the spring hung elsewhere; only for a mechanism that has mounts. */
  public Job at(Mounts mounts) {
    Mechanism hung = mechanism.rigid().orElseThrow().at(mounts);
    return with(hung, springCounts, rodEnd, tubeEnd, filters, limit, beside);
  }

  /** The same job with parts beside its springs. */
  public Job with(List<Beside> parts) {
    return with(mechanism, springCounts, rodEnd, tubeEnd, filters, limit, parts);
  }

  /** The same job with its load or geometry changed. */
  public Job moving(Mechanism other) {
    return with(other, springCounts, rodEnd, tubeEnd, filters, limit, beside);
  }

  /** The same job asking otherwise. */
  public Job asking(Requirements other) {
    return with(conditions, other, filters, rankBy);
  }

  /** The same job in another service. */
  public Job under(Conditions other) {
    return with(other, requirements, filters, rankBy);
  }

  /** The same job with other wishes for the end fittings. */
  public Job with(FittingWish rod, FittingWish tube) {
    return with(mechanism, springCounts, rod, tube, filters, limit, beside);
  }

  /** The same job for a number of springs that the shelf holds. */
  public Job fromShelf(int count, int most) {
    Filters shelf = new Filters(filters.families(), filters.finish(), true);
    return with(mechanism, List.of(count), rodEnd, tubeEnd, shelf, most, beside);
  }

  /** The same job with more or fewer rows of each list. */
  public Job showing(int most) {
    return with(mechanism, springCounts, rodEnd, tubeEnd, filters, most, beside);
  }

  /** The same job for gas springs that are yet to be made: those with the least hand force. */
  public Job forSpringsToMake() {
    Filters any = new Filters(Set.of(Family.GAS_SPRING), null, false);
    return with(conditions, requirements, any, RankBy.LEAST_EFFORT);
  }

  /** The same job in another order. */
  public Job by(RankBy order) {
    return with(conditions, requirements, filters, order);
  }

  private Job with(Conditions service, Requirements asked, Filters allowed, RankBy order) {
    return new Job(
        name,
        mechanism,
        springCounts,
        rodEnd,
        tubeEnd,
        service,
        asked,
        allowed,
        order,
        limit,
        weights,
        beside);
  }

  private Job with(
      Mechanism moving,
      List<Integer> counts,
      FittingWish rod,
      FittingWish tube,
      Filters allowed,
      int most,
      List<Beside> parts) {
    return new Job(
        name,
        moving,
        counts,
        rod,
        tube,
        conditions,
        requirements,
        allowed,
        rankBy,
        most,
        weights,
        parts);
  }

  /** What resists its speed besides the springs, at a temperature. */
  public Drag drag(double kelvin) {
    List<Drag> drags = beside.stream().map(each -> each.drag(kelvin)).toList();
    return drags.isEmpty()
        ? Drag.NONE
        : (q, speed) -> drags.stream().mapToDouble(each -> each.at(q, speed)).sum();
  }

  /** Whether the spring takes an end fitting on either end: a column stands in its cones. */
  public boolean fitted() {
    return mechanism.handMoves();
  }

  /**
   * What the effort is measured against, N: the limit at the hand; under a seat what the lightest
   * sitter brings to push it down with.
   */
  public double effortLimit() {
    return mechanism.handOrSeat(
        moved -> requirements.maxHandForce(), seat -> seat.light() - seat.empty());
  }

  /**
   * A kind of end fitting, or one by its number.
   *
   * @param type wanted, null where a number is given
   * @param number wanted, null where a type is given
   */
  public record FittingWish(@Nullable FittingType type, @Nullable String number) {

    /** As it is asked for: by its number, else by its kind. */
    public String code() {
      return number == null ? Objects.requireNonNull(type).code() : number;
    }
  }

  /**
   * @param coldest K
   * @param nominal K
   * @param hottest K
   * @param years of service
   * @param cyclesPerYear openings a year
   */
  public record Conditions(
      double coldest, double nominal, double hottest, double years, double cyclesPerYear) {}

  /** What ends the travel at the open end. */
  public enum OpenStop implements Coded {
    FLAP_STOP,
    SPRING_STOP
  }

  /**
   * @param families considered
   * @param finish wanted, null for any
   * @param inStockOnly whether the shelf must hold enough
   */
  public record Filters(Set<Family> families, @Nullable Finish finish, boolean inStockOnly) {}
}
