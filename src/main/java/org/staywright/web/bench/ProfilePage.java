package org.staywright.web.bench;

import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jboss.resteasy.reactive.RestResponse;
import org.jboss.resteasy.reactive.server.multipart.FormValue;
import org.jboss.resteasy.reactive.server.multipart.MultipartFormDataInput;
import org.staywright.form.job.ProfileTable;
import org.staywright.form.table.RowFault;
import org.staywright.stock.CurrentRange;
import org.staywright.web.query.Bench;
import org.staywright.web.query.JobQuery;
import org.staywright.wording.Wording;

/** A table of forces over length. */
@Path("/profile")
@Produces(MediaType.TEXT_HTML)
public final class ProfilePage extends BenchPage {

  /** Faults of a file that are shown; more are as good as a wrong file. */
  private static final int MOST = 20;

  private static final int UNPROCESSABLE = 422;

  ProfilePage(CurrentRange stock) {
    super(stock, Bench.PROFILE);
  }

  /** Takes the points out of a file into the job that was sent beside it. */
  @POST
  @Path("points")
  @Consumes(MediaType.MULTIPART_FORM_DATA)
  public RestResponse<TemplateInstance> read(MultipartFormDataInput form) throws IOException {
    Map<String, List<String>> values = new LinkedHashMap<>();
    ProfileTable table = ProfileTable.read(InputStream.nullInputStream());
    for (var part : form.getValues().entrySet()) {
      for (FormValue value : part.getValue()) {
        if (!value.isFileItem()) {
          values.put(part.getKey(), texts(values.get(part.getKey()), value.getValue()));
        } else if (part.getKey().equals("table")) {
          try (InputStream file = value.getFileItem().getInputStream()) {
            table = ProfileTable.read(file);
          }
        }
      }
    }
    JobQuery query = JobQuery.of(Bench.PROFILE, values);
    if (!table.faults().isEmpty()) {
      return RestResponse.ResponseBuilder.<TemplateInstance>create(UNPROCESSABLE)
          .entity(page(query, said(table.faults())))
          .build();
    }
    String address = query.with("load.points", table.text()).address();
    return RestResponse.seeOther(URI.create(address + "#result"));
  }

  private static List<String> texts(List<String> before, String text) {
    return before == null
        ? List.of(text)
        : Stream.concat(before.stream(), Stream.of(text)).toList();
  }

  private static List<String> said(List<RowFault> faults) {
    Wording wording = Bench.PROFILE.wording();
    return faults.stream()
        .limit(MOST)
        .map(
            fault -> {
              String column = fault.fault().where();
              String place =
                  wording.text("profile.row", Integer.toString(fault.row()), column).strip();
              return wording.fault(fault.fault().at(place));
            })
        .toList();
  }
}
