package org.staywright.form.schema;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.staywright.unit.Fault;

class JsonTextTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "{",
        "[1,",
        "{\"a\":}",
        "NaN",
        "{\"a\": NaN}",
        "{\"a\": Infinity}",
        "{\"a\": 1} x",
        "{} {}",
        "{'a': 1}",
        "{\"a\": 01}",
        "{\"a\": 1,}",
        "// remark\n{}",
        "nul",
        "\"\\u00g0\""
      })
  void refusesWhatIsNotJson(String text) {
    assertThrows(Unreadable.class, () -> read(text));
  }

  @Test
  void saysWhereReadingStopped() {
    Unreadable stopped = assertThrows(Unreadable.class, () -> read("{\"a\": 1,\n \"b\": oops}"));
    assertEquals(2, stopped.line());
  }

  @Test
  void refusesBottomlessNesting() {
    assertThrows(Unreadable.class, () -> read("[".repeat(100_000)));
  }

  @Test
  void refusesBytesThatAreNoText() {
    byte[] body = {'"', (byte) 0xc3, '(', '"'};
    assertThrows(Unreadable.class, () -> JsonText.read(body));
  }

  @Test
  void repeatedKeysAreFaultsAtTheirPlace() {
    JsonText text = read("{\"a\": {\"b\": 1, \"b\": 2}, \"c\": [{\"d\": 1, \"d\": null}]}");
    assertEquals(List.of("#/a/b", "#/c/0/d"), text.repeated().stream().map(Fault::where).toList());
    assertEquals(1, text.tree().at("/a/b").intValue());
  }

  private static JsonText read(String text) {
    return JsonText.read(text.getBytes(StandardCharsets.UTF_8));
  }
}
