package org.staywright.web.account;

import io.quarkus.test.oidc.server.OidcWiremockTestResource;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The program asks who is there, and takes tokens of another issuer. */
public class AnotherIssuer extends AccountsOn {

  @Override
  public Map<String, String> getConfigOverrides() {
    Map<String, String> settings = new HashMap<>(super.getConfigOverrides());
    settings.put("quarkus.oidc.tenant-enabled", "true");
    settings.put("quarkus.oidc.auth-server-url", "${keycloak.url}/realms/quarkus/");
    settings.put("quarkus.oidc.client-id", "staywright");
    settings.put("quarkus.http.auth.roles-mapping.\"design office\"", "editor");
    return settings;
  }

  @Override
  public List<TestResourceEntry> testResources() {
    return List.of(new TestResourceEntry(OidcWiremockTestResource.class));
  }
}
