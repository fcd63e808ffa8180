package org.staywright.job;

/** Thrown where someone else changed a job in between. */
public final class Stale extends RuntimeException {}
