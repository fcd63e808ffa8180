package org.staywright.fit;

/**
 * What a designer may state about how the load is to behave; null for what is not asked. SI.
 *
 * @param maxHandOpen limit while opening, in place of the common one, N
 * @param maxHandClose limit while closing, in place of the common one, N
 * @param risesFrom from here on it must rise by itself, even with the weakest spring, rad or m
 * @param staysPutFrom from here on it must neither rise nor fall, with a nominal spring, rad or m
 * @param staysPutTo up to here, the end of the travel where only the other is given, rad or m
 * @param maxLatchPush what the strongest spring may push with at the handle while shut, N
 * @param overCentreBy where the spring must have passed its dead centre at the latest, having
 *     pressed it shut before, rad
 */
public record Behaviour(
    Double maxHandOpen,
    Double maxHandClose,
    Double risesFrom,
    Double staysPutFrom,
    Double staysPutTo,
    Double maxLatchPush,
    Double overCentreBy) {

  public static final Behaviour ANY = new Behaviour(null, null, null, null, null, null, null);

  public boolean staysPut() {
    return staysPutFrom != null || staysPutTo != null;
  }

  boolean oneHandLimit() {
    return maxHandOpen == null && maxHandClose == null;
  }
}
