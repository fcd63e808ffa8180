package org.staywright.web.shell;

import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import org.staywright.document.job.OrderFile;

/** A file as an answer. */
public final class Download {

  private Download() {}

  /** One that is looked at. */
  public static Response shown(Object content, String name) {
    return named(Response.ok(content), "inline", name);
  }

  /** One that is kept. */
  public static Response kept(Object content, String name) {
    return named(Response.ok(content), "attachment", name);
  }

  public static Response of(OrderFile file, Object content, String name) {
    String how = file.shown() ? "inline" : "attachment";
    return named(Response.ok(content, file.type()), how, name);
  }

  private static Response named(Response.ResponseBuilder file, String how, String name) {
    return file.header(HttpHeaders.CONTENT_DISPOSITION, how + "; filename=\"" + name + "\"")
        .build();
  }
}
