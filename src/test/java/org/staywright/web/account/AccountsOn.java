package org.staywright.web.account;

import io.quarkus.test.junit.QuarkusTestProfile;
import java.util.Map;

/** The program asks who is there. */
public class AccountsOn implements QuarkusTestProfile {

  @Override
  public Map<String, String> getConfigOverrides() {
    return Map.of(
        "staywright.sign-in", "accounts",
        "staywright.tries-per-minute", "1000",
        "quarkus.http.proxy.proxy-address-forwarding", "true",
        "quarkus.http.proxy.allow-x-forwarded", "true",
        "quarkus.http.proxy.enable-forwarded-host", "true",
        "quarkus.datasource.jdbc.url",
            "jdbc:h2:mem:accounts;DB_CLOSE_DELAY=-1;LAZY_QUERY_EXECUTION=1");
  }
}
