package org.staywright.web.api.request;

import jakarta.ws.rs.ClientErrorException;
import org.staywright.form.schema.JsonText;

/** What was sent: JSON, and not much of it. */
public final class JsonBody {

  /** A job is a few kilobytes; nobody needs more. */
  private static final int MOST = 1 << 20;

  public static JsonText read(byte[] body) {
    if (body.length > MOST) {
      throw new ClientErrorException(413);
    }
    return JsonText.read(body);
  }
}
