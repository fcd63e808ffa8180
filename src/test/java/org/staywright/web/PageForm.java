package org.staywright.web;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.http.ContentType;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A form of a page, sent as a browser without script would. */
public final class PageForm {

  private static final Pattern HIDDEN =
      Pattern.compile("type=\"hidden\" name=\"([^\"]+)\" value=\"([^\"]*)\"");

  private final Response page;
  private final Map<String, List<String>> fields = new LinkedHashMap<>();

  private PageForm(Response page) {
    this.page = page;
  }

  /** The hidden fields of the form whose opening tag holds some text. */
  public static PageForm of(Response page, String tag) {
    String html = page.asString();
    int at = html.indexOf(tag);
    assertTrue(at >= 0, tag);
    int from = html.lastIndexOf("<form", at);
    PageForm form = new PageForm(page);
    Matcher field = HIDDEN.matcher(html.substring(from, html.indexOf("</form>", from)));
    while (field.find()) {
      form.fields
          .computeIfAbsent(field.group(1), name -> new ArrayList<>())
          .add(plain(field.group(2)));
    }
    return form;
  }

  /** The token alone. */
  public static PageForm empty(Response page) {
    PageForm form = new PageForm(page);
    form.with("csrf-token", first("name=\"csrf-token\" value=\"([^\"]+)\"", page.asString()));
    return form;
  }

  public PageForm with(String name, String value) {
    fields.put(name, List.of(value));
    return this;
  }

  public Map<String, List<String>> values() {
    return fields;
  }

  public Response post(String path) {
    return post(path, Map.of());
  }

  /** With what a proxy adds. */
  public Response post(String path, Map<String, String> headers) {
    RequestSpecification form =
        given()
            .headers(headers)
            .redirects()
            .follow(false)
            .cookies(page.cookies())
            .contentType(ContentType.URLENC.withCharset("UTF-8"));
    fields.forEach((name, values) -> form.formParam(name, values));
    return form.post(path);
  }

  public Response get(String path) {
    RequestSpecification form = given();
    fields.forEach((name, values) -> form.queryParam(name, values));
    return form.get(path);
  }

  public static String first(String pattern, String text) {
    Matcher matcher = Pattern.compile(pattern).matcher(text);
    assertTrue(matcher.find(), pattern);
    return plain(matcher.group(1));
  }

  private static String plain(String escaped) {
    return escaped
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&quot;", "\"")
        .replace("&#39;", "'")
        .replace("&amp;", "&");
  }
}
