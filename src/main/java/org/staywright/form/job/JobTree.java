package org.staywright.form.job;

import static org.staywright.unit.Unit.KILOGRAM;
import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.PERCENT;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Locale;
import java.util.Map;
import org.staywright.form.schema.Pointer;
import org.staywright.mechanism.Masses;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Point;
import org.staywright.part.Coded;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;
import org.staywright.unit.Unit;

/**
 * The values of a job's document by their pointers; NaN or null for what is not there.
 *
 * @param root with its defaults filled in, what is at fault left out
 */
public record JobTree(JsonNode root) {

  /** Where the fields that a mechanism finds fault with stand in the document. */
  private static final Map<String, String> PLACES =
      Map.of(
          "handle", "/load/handleMm",
          "frame", "/mounts/frameMm",
          "moving", "/mounts/movingMm");

  public boolean given(String at) {
    JsonNode node = root.at(at);
    return !node.isMissingNode() && !node.isNull();
  }

  double number(String at) {
    return given(at) ? root.at(at).doubleValue() : Double.NaN;
  }

  public double si(String at, Unit unit) {
    return unit.si(number(at));
  }

  /** In SI; null for what is not there. */
  Double orNull(String at, Unit unit) {
    return given(at) ? unit.si(number(at)) : null;
  }

  public String text(String at) {
    return root.at(at).textValue();
  }

  public boolean flag(String at) {
    return root.at(at).booleanValue();
  }

  /** Entries of a list, 0 for none. */
  public int size(String at) {
    return root.at(at).size();
  }

  public <E extends Enum<E> & Coded> E choice(String at, Class<E> type) {
    return given(at) ? Coded.of(type, text(at)).orElse(null) : null;
  }

  Point point(String at) {
    return new Point(si(at + "/x", MILLIMETRE), si(at + "/y", MILLIMETRE));
  }

  Masses masses() {
    double nominal = si("/load/massKg", KILOGRAM);
    double lightest =
        given("/load/lightestMassKg") ? si("/load/lightestMassKg", KILOGRAM) : nominal;
    double tolerance = si("/load/massTolerancePercent", PERCENT);
    return new Masses(nominal, nominal * (1 + tolerance), lightest * (1 - tolerance));
  }

  Mounts mounts() {
    return new Mounts(
        point("/mounts/frameMm"),
        point("/mounts/movingMm"),
        si("/mounts/lateralOffsetMm", MILLIMETRE),
        rodEnd("/mounts/rodEndAt"));
  }

  Mounts.RodEnd rodEnd(String at) {
    String word = text(at);
    return word == null ? null : Mounts.RodEnd.valueOf(word.toUpperCase(Locale.ROOT));
  }

  public Fault fault(String at, String bound, String code) {
    return new Fault(at, Pointer.shown(root.at(at)), bound, code);
  }

  /** Refuses what has no place here. */
  void refuse(String at, String code) {
    if (given(at)) {
      throw new Refusal(fault(at, "", code).at("#" + at));
    }
  }

  /** A fault that a mechanism found, at its place in the document with the value given there. */
  Fault placed(Fault fault) {
    String points = "points/";
    return fault.where().startsWith(points)
        ? fault("/load/" + fault.where() + "/lengthMm", fault.bound(), fault.code())
        : fault(PLACES.get(fault.where()), fault.bound(), fault.code());
  }
}
