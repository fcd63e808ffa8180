package org.staywright.web.door;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.cert.Certificate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLHandshakeException;
import javax.net.ssl.SSLSocket;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.staywright.Patience;
import org.staywright.web.Instance;

/**
 * TLS with a certificate in PEM that changes, plain HTTP sent there, health at a port of its own.
 */
class TlsIT {

  private static final Pattern HEALTH = Pattern.compile("Health and metrics on: (\\S+)/q");

  private static Path folder;
  private static Certified first;
  private static Instance program;
  private static int port;
  private static String health;

  @BeforeAll
  static void start() throws Exception {
    port = free();
    folder = Files.createTempDirectory(Path.of("target"), "tls-");
    first = Certified.in(folder.resolve("first.p12"));
    Path certificate = folder.resolve("certificate.pem");
    Path key = folder.resolve("key.pem");
    first.writePem(certificate, key);
    program =
        Instance.onH2(
            "tls",
            Map.of(
                "QUARKUS_TLS_KEY_STORE_PEM__0__CERT",
                certificate.toString(),
                "QUARKUS_TLS_KEY_STORE_PEM__0__KEY",
                key.toString(),
                "QUARKUS_TLS_RELOAD_PERIOD",
                "5s",
                "QUARKUS_HTTP_SSL_PORT",
                Integer.toString(port),
                "QUARKUS_HTTP_INSECURE_REQUESTS",
                "redirect",
                "STAYWRIGHT_MANAGEMENT_PORT",
                "0"));
    health = program.told(HEALTH);
    program.told(Pattern.compile("(Listening on)"));
  }

  /** A redirection names the port that is set, so that it cannot be any. */
  private static int free() throws IOException {
    try (ServerSocket socket = new ServerSocket(0)) {
      return socket.getLocalPort();
    }
  }

  @AfterAll
  static void end() {
    program.close();
  }

  private static HttpResponse<String> get(SSLContext trust, String address) throws Exception {
    HttpClient client =
        HttpClient.newBuilder().sslContext(trust).version(HttpClient.Version.HTTP_1_1).build();
    HttpRequest request = HttpRequest.newBuilder(URI.create(address)).build();
    try {
      return client.send(request, HttpResponse.BodyHandlers.ofString());
    } catch (IOException brokenOff) {
      // As a connection may be in the moment in which the certificate is read again.
      return client.send(request, HttpResponse.BodyHandlers.ofString());
    }
  }

  private static String page(String path) {
    return "https://localhost:" + port + path;
  }

  @Test
  void givesPagesOverTlsWhichTheBrowserIsToldToKeepTo() throws Exception {
    HttpResponse<String> page = get(Certified.trusting(List.of(first)), page("/flap?lang=de"));
    assertEquals(200, page.statusCode());
    assertTrue(page.body().contains("<h1>"), page.body());
    String policy = page.headers().firstValue("Strict-Transport-Security").orElse("");
    assertEquals("max-age=31536000; includeSubDomains", policy);
    List<String> cookies = page.headers().allValues("Set-Cookie");
    assertEquals(2, cookies.size(), cookies::toString);
    for (String cookie : cookies) {
      String plain = cookie.toLowerCase(Locale.ROOT);
      assertTrue(plain.contains("; secure") && plain.contains("; httponly"), cookie);
      assertTrue(plain.contains("samesite=lax"), cookie);
    }
  }

  @Test
  void isNotBelievedWithoutItsCertificate() throws Exception {
    SSLContext usual = SSLContext.getDefault();
    assertThrows(SSLHandshakeException.class, () -> get(usual, page("/")));
  }

  @Test
  void speaksTheNewestTlsOnly() throws Exception {
    SSLContext trust = Certified.trusting(List.of(first));
    assertEquals("TLSv1.3", spoken(trust, "TLSv1.3"));
    for (String old : List.of("TLSv1", "TLSv1.1", "TLSv1.2")) {
      assertThrows(IOException.class, () -> spoken(trust, old), old);
    }
  }

  /** The oldest two Java does not speak itself. */
  private static String spoken(SSLContext trust, String protocol) throws IOException {
    try (SSLSocket socket = (SSLSocket) trust.getSocketFactory().createSocket("localhost", port)) {
      socket.setEnabledProtocols(new String[] {protocol});
      socket.startHandshake();
      return socket.getSession().getProtocol();
    }
  }

  @Test
  void sendsPlainHttpThere() throws Exception {
    String plain = program.told(Pattern.compile("Listening on: (http://127.0.0.1:\\d+)"));
    HttpResponse<String> sent = get(Certified.trusting(List.of(first)), plain + "/jobs?q=lid");
    assertEquals(301, sent.statusCode());
    assertEquals(
        page("/jobs?q=lid").replace("localhost", "127.0.0.1"),
        sent.headers().firstValue("Location").orElse(""));
    assertFalse(sent.headers().firstValue("Strict-Transport-Security").isPresent());
  }

  @Test
  void takesANewCertificateWithoutBeingStartedAgain() throws Exception {
    Certified next = Certified.in(folder.resolve("next.p12"));
    SSLContext trust = Certified.trusting(List.of(first, next));
    next.writePem(folder.resolve("certificate.pem"), folder.resolve("key.pem"));
    Certificate wanted = next.certificate();
    Patience.until(() -> shown(trust), wanted::equals);
    assertEquals(200, get(trust, page("/")).statusCode());
    first = next;
  }

  /** Null: broken off, as may happen while the certificate is just being changed. */
  private static @Nullable Certificate shown(SSLContext trust) {
    try (SSLSocket socket = (SSLSocket) trust.getSocketFactory().createSocket("localhost", port)) {
      socket.startHandshake();
      return socket.getSession().getPeerCertificates()[0];
    } catch (IOException brokenOff) {
      return null;
    }
  }

  @Test
  void answersWhoWatchesAtThePortOfItsOwnAndNowhereElse() throws Exception {
    SSLContext trust = Certified.trusting(List.of(first));
    for (String path : List.of("/q/health/ready", "/q/metrics", "/q/openapi")) {
      assertEquals(200, get(trust, health + path).statusCode(), path);
      assertEquals(404, get(trust, page(path)).statusCode(), path);
    }
    for (String path : List.of("/", "/api/v1/parts", "/css/staywright.css", "/q/../jobs", "/qq")) {
      assertEquals(404, get(trust, health + path).statusCode(), path);
    }
    assertEquals(404, get(trust, page("/jobs/../q/metrics")).statusCode());
    assertEquals(200, get(trust, page("/api/v1/parts?size=1")).statusCode());
  }
}
