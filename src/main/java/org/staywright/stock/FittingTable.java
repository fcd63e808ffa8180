package org.staywright.stock;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.staywright.form.part.FittingColumn;
import org.staywright.form.part.FittingRow;
import org.staywright.form.table.NumberColumn;
import org.staywright.part.Coded;
import org.staywright.part.Finish;
import org.staywright.part.Fitting;
import org.staywright.part.FittingType;
import org.staywright.part.Offer;

/** End fittings and brackets in the database. */
final class FittingTable extends Table<Fitting> {

  FittingTable() {
    super(
        "fitting",
        Stream.concat(
                Stream.of("description", "type", "finish", "thread"),
                Arrays.stream(FittingColumn.values()).map(NumberColumn::column))
            .toList());
  }

  @Override
  String number(Fitting fitting) {
    return fitting.number();
  }

  @Override
  Offer offer(Fitting fitting) {
    return fitting.offer();
  }

  @Override
  List<Object> values(Fitting fitting) {
    List<Object> values = new ArrayList<>();
    values.add(fitting.description());
    values.add(fitting.type().code());
    values.add(fitting.finish().code());
    values.add(fitting.thread());
    values.addAll(FittingRow.of(fitting).numbers().values());
    return values;
  }

  @Override
  Fitting read(Stored row, Offer offer) {
    Map<FittingColumn, Double> numbers = new EnumMap<>(FittingColumn.class);
    for (FittingColumn number : FittingColumn.values()) {
      numbers.put(number, row.number(number.column()));
    }
    return new FittingRow(
            row.text("part_number"),
            row.text("description"),
            Coded.of(FittingType.class, row.text("type")).orElseThrow(),
            Coded.of(Finish.class, row.text("finish")).orElseThrow(),
            row.text("thread"),
            numbers,
            offer)
        .fitting();
  }
}
