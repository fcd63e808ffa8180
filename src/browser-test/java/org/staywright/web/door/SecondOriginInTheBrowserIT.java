package org.staywright.web.door;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.options.ColorScheme;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.staywright.web.InTheBrowser;

/** A page of another site sends whatever a page can, in a real browser, to a program with data. */
class SecondOriginInTheBrowserIT extends InTheBrowser {

  private static final byte[] PAGE =
      "<!doctype html><title>Elsewhere</title><iframe name=\"shown\"></iframe>".getBytes(UTF_8);

  private static final List<String> TYPES =
      List.of("text/plain", "application/x-www-form-urlencoded", "multipart/form-data");

  private static final HttpClient HTTP = HttpClient.newHttpClient();

  @Test
  void noPageOfAnotherSiteChangesAnything() throws IOException, InterruptedException {
    InetAddress here = InetAddress.getLoopbackAddress();
    HttpServer elsewhere = HttpServer.create(new InetSocketAddress(here, 0), 0);
    elsewhere.createContext(
        "/",
        exchange -> {
          exchange.getResponseHeaders().add("Content-Type", "text/html; charset=UTF-8");
          exchange.sendResponseHeaders(200, PAGE.length);
          exchange.getResponseBody().write(PAGE);
          exchange.close();
        });
    elsewhere.start();
    Map<String, String> before = state();
    try (BrowserContext context = context(1280, true, ColorScheme.LIGHT)) {
      Page page = context.newPage();
      List<String> passed = new ArrayList<>();
      List<String> met = new ArrayList<>();
      page.onResponse(
          response -> {
            if (response.url().startsWith(start)) {
              met.add(told(response));
              if (response.status() < 400) {
                passed.add(told(response));
              }
            }
          });
      // Another name of this computer is another site to a browser.
      page.navigate("http://127.0.0.1:" + elsewhere.getAddress().getPort() + "/");
      List<ChangingRoute> routes = ChangingRoute.all().toList();
      for (ChangingRoute route : routes) {
        String address = start.replaceFirst("/$", "") + route.filled();
        if (route.method().equals("POST")) {
          TYPES.forEach(type -> page.evaluate(FORM, List.of(address, type)));
        }
        page.evaluate(FETCH, List.of(address, route.method()));
      }
      assertEquals(List.of(), passed);
      assertTrue(met.size() >= routes.size(), met.size() + " answers to " + routes.size());
      assertEquals(before, state());
    } finally {
      elsewhere.stop(0);
    }
  }

  /** Sent into the frame, and waited for. */
  private static final String FORM =
      """
      ([address, type]) => new Promise(done => {
        const form = document.createElement('form');
        form.action = address; form.method = 'post'; form.enctype = type; form.target = 'shown';
        form.innerHTML = '<input name="revision" value="1">';
        document.body.append(form);
        document.querySelector('iframe').onload = () => done();
        form.submit();
      })""";

  /** Without asking first, of which nothing is read, and as JSON, which asks first. */
  private static final String FETCH =
      """
      async ([address, method]) => {
        const body = method === 'DELETE' ? undefined : 'revision=1';
        for (const type of ['text/plain', 'application/x-www-form-urlencoded'])
          if (method === 'POST')
            await fetch(address, {method, mode: 'no-cors', credentials: 'include', body,
              headers: {'Content-Type': type}}).catch(() => {});
        await fetch(address, {method, credentials: 'include', body,
          headers: {'Content-Type': 'application/json'}}).catch(() => {});
      }""";

  private static String told(Response response) {
    return response.status() + " " + response.request().method() + " " + response.url();
  }

  /** All that a page of another site could have changed. */
  private static Map<String, String> state() throws IOException, InterruptedException {
    return Map.of(
        "revisions", read("api/v1/stock/revisions"),
        "jobs", read("api/v1/jobs?size=100"),
        "batches", read("api/v1/batches"));
  }

  private static String read(String path) throws IOException, InterruptedException {
    HttpRequest request = HttpRequest.newBuilder(URI.create(start + path)).build();
    return HTTP.send(request, HttpResponse.BodyHandlers.ofString()).body();
  }
}
