package org.staywright.backup;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;

/** What a column holds, whatever its database calls it, and how that is written as JSON. */
enum ColumnKind {
  WHOLE("12"),
  NUMBER("1.5"),
  TEXT("\"…\""),
  FLAG("true | false"),
  DAY("\"2026-12-31\""),
  MOMENT("\"2026-12-31T12:00:00Z\"");

  private final String example;

  ColumnKind(String example) {
    this.example = example;
  }

  /** In JSON. */
  String example() {
    return example;
  }

  /** By the type that the driver tells: each has words of its own for text, flag and moment. */
  static ColumnKind of(int type) {
    return switch (type) {
      case Types.INTEGER, Types.BIGINT -> WHOLE;
      case Types.DOUBLE -> NUMBER;
      case Types.VARCHAR, Types.CLOB -> TEXT;
      case Types.BOOLEAN, Types.BIT -> FLAG;
      case Types.DATE -> DAY;
      case Types.TIMESTAMP, Types.TIMESTAMP_WITH_TIMEZONE -> MOMENT;
      default -> throw new IllegalStateException("no backup of a column of the type " + type);
    };
  }

  void write(JsonGenerator json, ResultSet row, int column) throws SQLException, IOException {
    switch (this) {
      case WHOLE -> {
        long value = row.getLong(column);
        if (!row.wasNull()) {
          json.writeNumber(value);
        }
      }
      case NUMBER -> {
        double value = row.getDouble(column);
        if (!row.wasNull()) {
          json.writeNumber(value);
        }
      }
      case FLAG -> {
        boolean value = row.getBoolean(column);
        if (!row.wasNull()) {
          json.writeBoolean(value);
        }
      }
      case TEXT -> writeText(json, row.getString(column));
      case DAY -> writeText(json, row.getObject(column, LocalDate.class));
      case MOMENT -> {
        OffsetDateTime value = row.getObject(column, OffsetDateTime.class);
        writeText(json, value == null ? null : value.toInstant());
      }
    }
    if (row.wasNull()) {
      json.writeNull();
    }
  }

  private static void writeText(JsonGenerator json, Object value) throws IOException {
    if (value != null) {
      json.writeString(value.toString());
    }
  }

  /** Whether a value can be of this kind. */
  boolean takes(JsonToken token) {
    return token == JsonToken.VALUE_NULL
        || switch (this) {
          case WHOLE -> token == JsonToken.VALUE_NUMBER_INT;
          case NUMBER -> token.isNumeric();
          case FLAG -> token.isBoolean();
          case TEXT, DAY, MOMENT -> token == JsonToken.VALUE_STRING;
        };
  }

  /** The value at which a reader stands, as a database takes it; null for none. */
  Object read(JsonParser json) throws IOException {
    if (json.currentToken() == JsonToken.VALUE_NULL) {
      return null;
    }
    return switch (this) {
      case WHOLE -> json.getLongValue();
      case NUMBER -> json.getDoubleValue();
      case FLAG -> json.getBooleanValue();
      case TEXT -> json.getText();
      case DAY -> LocalDate.parse(json.getText());
      case MOMENT -> Instant.parse(json.getText()).atOffset(ZoneOffset.UTC);
    };
  }
}
