package org.staywright.web.api;

import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Files that are too long to be sent: answered before they have come. */
@QuarkusTest
@Tag("server")
class EndlessImportTest {

  private static final String HEAD =
      "POST /api/v1/stock/imports HTTP/1.1\r\nHost: localhost\r\nContent-Type: text/csv\r\n";

  @Test
  void twoGigabytesAreRefusedByTheirLength() throws IOException {
    try (Socket socket = connected()) {
      send(socket, HEAD + "Content-Length: 2147483648\r\n\r\n");
      String status = status(socket);
      assertTrue(status.contains(" 413 "), status);
    }
  }

  @Test
  void zerosWithoutEndAreAnsweredAfterTheFirst() throws IOException {
    try (Socket socket = connected()) {
      send(socket, HEAD + "Transfer-Encoding: chunked\r\n\r\n");
      // Only so much is ever sent: an answer must not wait for the end.
      send(socket, "10000\r\n");
      socket.getOutputStream().write(new byte[0x10000]);
      send(socket, "\r\n");
      String status = status(socket);
      assertTrue(status.contains(" 422 "), status);
    }
  }

  private static Socket connected() throws IOException {
    Socket socket = new Socket("localhost", RestAssured.port);
    socket.setSoTimeout(60_000);
    return socket;
  }

  private static void send(Socket socket, String text) throws IOException {
    OutputStream out = socket.getOutputStream();
    out.write(text.getBytes(StandardCharsets.US_ASCII));
    out.flush();
  }

  private static String status(Socket socket) throws IOException {
    return new BufferedReader(
            new InputStreamReader(socket.getInputStream(), StandardCharsets.US_ASCII))
        .readLine();
  }
}
