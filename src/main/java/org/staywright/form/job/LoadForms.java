package org.staywright.form.job;

import java.util.List;
import java.util.Optional;

/** Every type of load. */
public final class LoadForms {

  public static final List<LoadForm> ALL =
      List.of(new FlapForm(), new LiftForm(), new ProfileForm(), new SeatForm());

  private LoadForms() {}

  /** Of a type by its word; empty for a word that is none. */
  public static Optional<LoadForm> of(String type) {
    return ALL.stream().filter(form -> form.shape().name().equals(type)).findFirst();
  }
}
