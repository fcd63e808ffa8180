package org.staywright.web;

import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;

/** Three doors: for who designs, who buys and who fits. */
@Path("/")
@Produces(MediaType.TEXT_HTML)
public final class StartPage {

  @GET
  public TemplateInstance show() {
    return Templates.start();
  }
}
