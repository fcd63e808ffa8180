package org.staywright.stock;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.staywright.form.part.PartColumn;
import org.staywright.form.part.PartRow;
import org.staywright.form.table.NumberColumn;
import org.staywright.part.Coded;
import org.staywright.part.Family;
import org.staywright.part.Finish;
import org.staywright.part.Mounting;
import org.staywright.part.Offer;
import org.staywright.part.Part;
import org.staywright.spring.Locking;

/** Parts in the database. */
final class PartTable extends Table<Part> {

  private static final List<String> TEXTS =
      List.of(
          "description",
          "family",
          "finish",
          "rod_thread",
          "tube_thread",
          "mounting",
          "locking",
          "derived");

  PartTable() {
    super(
        "part",
        Stream.concat(TEXTS.stream(), Arrays.stream(PartColumn.values()).map(NumberColumn::column))
            .toList());
  }

  @Override
  String number(Part part) {
    return part.number();
  }

  @Override
  Offer offer(Part part) {
    return part.offer();
  }

  @Override
  List<Object> values(Part part) {
    List<Object> values = new ArrayList<>();
    values.add(part.description());
    values.add(part.family().code());
    values.add(part.finish().code());
    values.add(part.ends().rod());
    values.add(part.ends().tube());
    PartRow asRow = PartRow.of(part);
    values.add(part.mounting().code());
    values.add(asRow.locking() == null ? null : asRow.locking().code());
    values.add(String.join(" ", part.derived()));
    for (PartColumn column : PartColumn.values()) {
      values.add(asRow.numbers().get(column));
    }
    return values;
  }

  private static Locking locking(String code) {
    return Stream.of(Locking.values()).filter(l -> l.code().equals(code)).findFirst().orElse(null);
  }

  @Override
  Part read(Stored row, Offer offer) {
    Family family = Coded.of(Family.class, row.text("family")).orElseThrow();
    Map<PartColumn, Double> numbers = new EnumMap<>(PartColumn.class);
    for (PartColumn number : PartColumn.of(family)) {
      numbers.put(number, row.number(number.column()));
    }
    String derived = row.text("derived");
    return new PartRow(
            row.text("part_number"),
            row.text("description"),
            family,
            Coded.of(Finish.class, row.text("finish")).orElseThrow(),
            new Part.Ends(row.text("rod_thread"), row.text("tube_thread")),
            Coded.of(Mounting.class, row.text("mounting")).orElseThrow(),
            locking(row.text("locking")),
            numbers,
            offer,
            derived.isEmpty() ? List.of() : List.of(derived.split(" ")))
        .part();
  }
}
