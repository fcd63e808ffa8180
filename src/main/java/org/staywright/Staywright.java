package org.staywright;

import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.annotations.QuarkusMain;
import org.eclipse.microprofile.config.ConfigProvider;

/**
 * Starts the program, once it is known that it may listen where it is told to, and that its data
 * folder is fit for use where it has one.
 */
@QuarkusMain
public class Staywright {

  private static final String PROPERTY = "staywright.data";
  private static final String VARIABLE = "STAYWRIGHT_DATA";
  private static final String DEFAULT = "./data";

  public static void main(String... args) {
    try {
      ListeningAddress.check(setting("quarkus.http.host"), setting("staywright.sign-in"));
      ListeningAddress.check(setting("staywright.management.host"), setting("staywright.sign-in"));
      if (setting("quarkus.datasource.jdbc.url").startsWith("jdbc:h2:file:")) {
        prepareFolder();
      }
    } catch (CannotStart e) {
      System.err.println(e.getMessage());
      System.exit(1);
    }
    Quarkus.run(args);
  }

  private static String setting(String name) {
    return ConfigProvider.getConfig().getValue(name, String.class);
  }

  private static void prepareFolder() {
    String named = System.getProperty(PROPERTY, System.getenv(VARIABLE));
    DataFolder folder = DataFolder.prepare(named == null || named.isBlank() ? DEFAULT : named);
    System.setProperty(PROPERTY, folder.path().toString());
  }
}
