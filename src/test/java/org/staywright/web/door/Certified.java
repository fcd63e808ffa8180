package org.staywright.web.door;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.cert.Certificate;
import java.util.Base64;
import java.util.List;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;

/**
 * A key and its self-signed certificate for this computer, made by the tool that comes with Java.
 */
record Certified(Path file, KeyStore store) {

  static final String PASSWORD = "of-a-test-only";

  private static final String ALIAS = "staywright";

  static Certified in(Path file) throws Exception {
    Files.deleteIfExists(file);
    Process tool =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "keytool").toString(),
                "-genkeypair",
                "-alias",
                ALIAS,
                "-keyalg",
                "EC",
                "-groupname",
                "secp256r1",
                "-validity",
                "2",
                "-dname",
                "CN=localhost",
                "-ext",
                "san=dns:localhost",
                "-storetype",
                "PKCS12",
                "-storepass",
                PASSWORD,
                "-keystore",
                file.toString())
            .redirectErrorStream(true)
            .start();
    String said = new String(tool.getInputStream().readAllBytes());
    assertEquals(0, tool.waitFor(), said);
    KeyStore store = KeyStore.getInstance("PKCS12");
    try (InputStream bytes = Files.newInputStream(file)) {
      store.load(bytes, PASSWORD.toCharArray());
    }
    return new Certified(file, store);
  }

  Certificate certificate() throws GeneralSecurityException {
    return store.getCertificate(ALIAS);
  }

  void writePem(Path certificate, Path key) throws GeneralSecurityException, IOException {
    Files.writeString(
        key, pem("PRIVATE KEY", store.getKey(ALIAS, PASSWORD.toCharArray()).getEncoded()));
    Files.writeString(certificate, pem("CERTIFICATE", certificate().getEncoded()));
  }

  private static String pem(String what, byte[] bytes) {
    return "-----BEGIN %s-----%n%s%n-----END %s-----%n"
        .formatted(what, Base64.getMimeEncoder().encodeToString(bytes), what);
  }

  /** Believes nobody but these. */
  static SSLContext trusting(List<Certified> believed)
      throws GeneralSecurityException, IOException {
    KeyStore trusted = KeyStore.getInstance("PKCS12");
    trusted.load(null, null);
    for (Certified each : believed) {
      trusted.setCertificateEntry(each.file.toString(), each.certificate());
    }
    TrustManagerFactory trust =
        TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
    trust.init(trusted);
    SSLContext context = SSLContext.getInstance("TLS");
    context.init(null, trust.getTrustManagers(), null);
    return context;
  }
}
