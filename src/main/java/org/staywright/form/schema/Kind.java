package org.staywright.form.schema;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.POJONode;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.staywright.part.Coded;
import org.staywright.unit.Bound;
import org.staywright.unit.Fault;
import org.staywright.unit.Unit;

/** What a field may hold. Read by the binding, by the OpenAPI document and by the HTML form. */
public sealed interface Kind
    permits Kind.Amount,
        Kind.Whole,
        Kind.Text,
        Kind.Choice,
        Kind.Flag,
        Kind.Listing,
        Kind.Many,
        Kind.Anything,
        Kind.Later,
        Kind.Variants,
        Shape {

  /**
   * Checks a value that is there.
   *
   * @param node not null and not JSON null
   * @param at its JSON pointer
   * @param faults takes what is wrong with it
   * @return the value as kept, null where it is at fault
   */
  JsonNode read(JsonNode node, String at, List<Fault> faults);

  /** Adds a fault and keeps nothing. */
  private static JsonNode refused(
      List<Fault> faults, String at, JsonNode node, String bound, String code) {
    faults.add(new Fault(at, Pointer.shown(node), bound, code));
    return null;
  }

  /** True, and the fault added, where a typed number could not be read. */
  private static boolean misread(JsonNode node, String at, List<Fault> faults) {
    if (node instanceof POJONode unread && unread.getPojo() instanceof Fault fault) {
      faults.add(fault.at(at));
      return true;
    }
    return false;
  }

  /** A number in a bound. */
  record Amount(Bound bound) implements Kind {

    private static final Pattern DECIMAL_COMMA = Pattern.compile("[+-]?\\d+,\\d+");

    /** Unit of a number of this kind, null for one that is plain. */
    public Unit unit() {
      return Unit.of(bound.unit()).orElse(null);
    }

    public static Amount between(double low, double high, Unit unit) {
      return new Amount(Bound.between(low, high, unit.symbol()));
    }

    public static Amount positive(double high, Unit unit) {
      return new Amount(Bound.above(0, high, unit.symbol()));
    }

    @Override
    public JsonNode read(JsonNode node, String at, List<Fault> faults) {
      if (misread(node, at, faults)) {
        return null;
      }
      if (!node.isNumber()) {
        boolean comma = node.isTextual() && DECIMAL_COMMA.matcher(node.textValue()).matches();
        return refused(faults, at, node, bound.text(), comma ? "decimal-comma" : "not-a-number");
      }
      if (!bound.holds(node.doubleValue())) {
        return refused(faults, at, node, bound.text(), "out-of-bounds");
      }
      return JsonNumber.of(node.doubleValue(), 15);
    }
  }

  /** A whole number, both ends included. */
  record Whole(int low, int high) implements Kind {

    public Bound bound() {
      return Bound.between(low, high, "");
    }

    @Override
    public JsonNode read(JsonNode node, String at, List<Fault> faults) {
      if (misread(node, at, faults)) {
        return null;
      }
      if (!node.isNumber()) {
        return refused(faults, at, node, bound().text(), "not-a-number");
      }
      double value = node.doubleValue();
      if (!bound().holds(value)) {
        return refused(faults, at, node, bound().text(), "out-of-bounds");
      }
      if (value != Math.rint(value)) {
        return refused(faults, at, node, bound().text(), "not-whole");
      }
      return JsonNodeFactory.instance.numberNode((int) value);
    }
  }

  /**
   * Text without control characters.
   *
   * @param longest number of characters
   * @param pattern the whole must match, null for any
   * @param bound what the pattern means, in symbols
   */
  record Text(int longest, Pattern pattern, String bound) implements Kind {

    public static Text upTo(int longest) {
      return new Text(longest, null, "≤ " + longest);
    }

    @Override
    public JsonNode read(JsonNode node, String at, List<Fault> faults) {
      if (!node.isTextual()) {
        return refused(faults, at, node, bound, "not-text");
      }
      String text = node.textValue();
      if (text.length() > longest) {
        return refused(faults, at, node, "≤ " + longest, "too-long");
      }
      if (text.codePoints().anyMatch(Text::unfit)) {
        return refused(faults, at, node, bound, "control-character");
      }
      if (pattern != null && !pattern.matcher(text).matches()) {
        return refused(faults, at, node, bound, "not-of-the-form");
      }
      return node;
    }

    /** Control characters and halves of surrogate pairs: databases and documents choke on them. */
    private static boolean unfit(int character) {
      return Character.isISOControl(character)
          || Character.getType(character) == Character.SURROGATE;
    }
  }

  /**
   * One of some words.
   *
   * @param words accepted
   * @param later words of the interface that nothing stands behind yet
   */
  record Choice(List<String> words, List<String> later) implements Kind {

    public Choice {
      words = List.copyOf(words);
      later = List.copyOf(later);
    }

    public static <E extends Enum<E> & Coded> Choice of(Class<E> type, String... later) {
      List<String> words = Stream.of(type.getEnumConstants()).map(Coded::code).toList();
      return new Choice(words, List.of(later));
    }

    public static Choice of(String... words) {
      return new Choice(List.of(words), List.of());
    }

    @Override
    public JsonNode read(JsonNode node, String at, List<Fault> faults) {
      String bound = String.join(" | ", words);
      if (node.isTextual() && words.contains(node.textValue())) {
        return node;
      }
      boolean known = node.isTextual() && later.contains(node.textValue());
      return refused(faults, at, node, bound, known ? "not-offered-yet" : "not-a-choice");
    }
  }

  /** True or false. */
  record Flag() implements Kind {

    @Override
    public JsonNode read(JsonNode node, String at, List<Fault> faults) {
      return node.isBoolean() ? node : refused(faults, at, node, "true | false", "not-a-flag");
    }
  }

  /** A list without repeats, of at least one. */
  record Listing(Kind of, int most) implements Kind {

    @Override
    public JsonNode read(JsonNode node, String at, List<Fault> faults) {
      if (!node.isArray()) {
        return refused(faults, at, node, "[ ]", "not-a-list");
      }
      if (node.isEmpty() || node.size() > most) {
        return refused(faults, at, node, "1…" + most, "list-size");
      }
      int before = faults.size();
      List<JsonNode> kept = new ArrayList<>();
      for (int i = 0; i < node.size(); i++) {
        String place = Pointer.of(at, Integer.toString(i));
        JsonNode value = of.read(node.get(i), place, faults);
        if (value != null && kept.contains(value)) {
          refused(faults, place, node.get(i), "", "listed-twice");
        }
        kept.add(value);
      }
      ArrayNode list = JsonNodeFactory.instance.arrayNode();
      return faults.size() == before ? list.addAll(kept) : null;
    }
  }

  /**
   * A list of entries of a kind, which may be alike.
   *
   * @param least number of entries
   * @param most number of entries
   */
  record Many(Kind of, int least, int most) implements Kind {

    private static final Pattern INDEX = Pattern.compile("0|[1-9]\\d{0,3}");

    /** Any number. */
    public Many(Kind of) {
      this(of, 0, Integer.MAX_VALUE);
    }

    /** Whether entries are plain enough for the lines of a table; else their fields have names. */
    public boolean tabular() {
      return of instanceof Shape row
          && row.fields().values().stream()
              .noneMatch(
                  field -> field.kind() instanceof Shape || field.kind() instanceof Variants);
    }

    /** Whether a text is the index of an entry that there may be. */
    boolean hasRoomFor(String index) {
      return INDEX.matcher(index).matches() && Integer.parseInt(index) < most;
    }

    @Override
    public JsonNode read(JsonNode node, String at, List<Fault> faults) {
      if (!node.isArray()) {
        return refused(faults, at, node, "[ ]", "not-a-list");
      }
      if (node.size() < least || node.size() > most) {
        faults.add(new Fault(at, node.size(), least + "…" + most, "list-size"));
        return null;
      }
      ArrayNode list = JsonNodeFactory.instance.arrayNode();
      for (int i = 0; i < node.size(); i++) {
        list.add(of.read(node.get(i), Pointer.of(at, Integer.toString(i)), faults));
      }
      return list;
    }
  }

  /** Whatever it is. */
  record Anything() implements Kind {

    @Override
    public JsonNode read(JsonNode node, String at, List<Fault> faults) {
      return node;
    }
  }

  /** A field of the interface that nothing stands behind yet. */
  record Later() implements Kind {

    @Override
    public JsonNode read(JsonNode node, String at, List<Fault> faults) {
      return refused(faults, at, node, "", "not-offered-yet");
    }
  }

  /** An object of one of several shapes, told apart by a word in it. */
  record Variants(String key, List<Shape> shapes, List<String> later) implements Kind {

    public Variants {
      shapes = List.copyOf(shapes);
      later = List.copyOf(later);
    }

    @Override
    public JsonNode read(JsonNode node, String at, List<Fault> faults) {
      if (!node.isObject()) {
        return refused(faults, at, node, "{ }", "not-an-object");
      }
      List<String> words = shapes.stream().map(Shape::name).toList();
      String place = Pointer.of(at, key);
      JsonNode word = node.get(key);
      if (word == null || word.isNull()) {
        faults.add(new Fault(place, null, String.join(" | ", words), "missing"));
        return null;
      }
      if (new Choice(words, later).read(word, place, faults) == null) {
        return null;
      }
      return shapes.get(words.indexOf(word.textValue())).read(node, at, faults);
    }
  }
}
