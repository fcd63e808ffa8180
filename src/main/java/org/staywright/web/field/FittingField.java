package org.staywright.web.field;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.staywright.part.Fitting;
import org.staywright.part.FittingType;
import org.staywright.wording.PartText;
import org.staywright.wording.Wording;

/**
 * An end fitting in a form: its kind, and beside that its number where it is to be a certain one.
 *
 * @param input as the job has it
 * @param number typed, "" for none
 * @param kinds to choose from
 * @param numbers to choose from, of that kind
 */
public record FittingField(
    Input input, String number, List<Input.Option> kinds, List<Input.Option> numbers) {

  static FittingField of(Input input, List<Fitting> range, Wording wording) {
    PartText text = PartText.in(wording);
    Optional<FittingType> kind = kind(input.value());
    String number = kind.isPresent() ? "" : input.value();
    FittingType shown =
        kind.orElseGet(
            () ->
                range.stream()
                    .filter(fitting -> fitting.number().equals(number))
                    .map(Fitting::type)
                    .filter(FittingType::endsASpring)
                    .findFirst()
                    .orElse(FittingType.BALL_SOCKET));
    return new FittingField(
        input,
        number,
        ends().map(t -> new Input.Option(t.code(), text.name("fitting", t), t == shown)).toList(),
        range.stream()
            .filter(fitting -> fitting.type() == shown)
            .map(f -> new Input.Option(f.number(), text.describe(f), f.number().equals(number)))
            .toList());
  }

  private static Stream<FittingType> ends() {
    return Stream.of(FittingType.values()).filter(FittingType::endsASpring);
  }

  private static Optional<FittingType> kind(String value) {
    return ends().filter(type -> type.code().equals(value)).findFirst();
  }

  public String id() {
    return input.id();
  }

  public String name() {
    return input.name();
  }

  public String label() {
    return input.label();
  }

  public String fault() {
    return input.fault();
  }
}
