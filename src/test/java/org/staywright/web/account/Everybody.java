package org.staywright.web.account;

import static io.restassured.RestAssured.given;
import static org.staywright.database.Somebody.ANNA;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.restassured.config.RedirectConfig;
import io.restassured.config.RestAssuredConfig;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.staywright.account.Account;
import org.staywright.account.Accounts;
import org.staywright.account.Role;
import org.staywright.web.door.ChangingRoute;

/** One of each role, with a token, and one who has not signed in. */
final class Everybody {

  private static final RestAssuredConfig STAYS =
      RestAssuredConfig.config().redirect(RedirectConfig.redirectConfig().followRedirects(false));

  private final Map<Role, String> tokens = new EnumMap<>(Role.class);

  Everybody(Accounts accounts) {
    for (Role role : Role.values()) {
      String name = "one " + role.code();
      if (accounts.all().stream().noneMatch(each -> each.name.equals(name))) {
        accounts.add(ANNA, name, role);
      }
      Account account =
          accounts.all().stream().filter(each -> each.name.equals(name)).findFirst().orElseThrow();
      tokens.put(role, accounts.addToken(ANNA, account.id, "test", role, 1));
    }
  }

  /** All of them, he who has no role first. */
  static Stream<Optional<Role>> roles() {
    return Stream.concat(Stream.of(Optional.empty()), Stream.of(Role.values()).map(Optional::of));
  }

  RequestSpecification as(Optional<Role> role) {
    RequestSpecification request = given().config(STAYS);
    role.ifPresent(has -> request.header("Authorization", "Bearer " + tokens.get(has)));
    return request;
  }

  RequestSpecification as(Role role) {
    return as(Optional.of(role));
  }

  /** A method and the address it is sent to, nobody's where a name is to be filled in. */
  record Asked(String method, String path) {

    /** As a browser or a program sends it, with nothing in it that could be done. */
    Response sent(RequestSpecification request) {
      if (method.equals("GET")) {
        return request.get(path);
      }
      if (path.startsWith("/api")) {
        request.contentType("application/json");
      } else {
        request.formParam("nothing", "");
      }
      return request.request(method, path);
    }

    boolean refused(RequestSpecification request) {
      Response answer = sent(request);
      String to = answer.header("Location");
      return Set.of(401, 403).contains(answer.statusCode())
          || to != null && to.contains("/sign-in");
    }
  }

  /** Every operation of the served document, and every address of a page that the classes name. */
  static List<Asked> everything(RequestSpecification reader) {
    List<Asked> all = new ArrayList<>();
    JsonNode paths = parsed(reader.get("/q/openapi?format=json").asString()).get("paths");
    for (var path : paths.properties()) {
      for (var operation : path.getValue().properties()) {
        String method = operation.getKey().toUpperCase(Locale.ROOT);
        all.add(new Asked(method, filled(path.getKey())));
      }
    }
    Stream.concat(ChangingRoute.all(), ChangingRoute.reading())
        .filter(route -> !route.ofInterface())
        .map(route -> new Asked(route.method(), filled(route.path())))
        .forEach(all::add);
    return all;
  }

  private static JsonNode parsed(String json) {
    try {
      return new ObjectMapper().readTree(json);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(json, e);
    }
  }

  private static String filled(String path) {
    return path.replaceAll("\\{[^}]*}", "nobody");
  }
}
