package org.staywright;

import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.annotations.QuarkusMain;
import org.eclipse.microprofile.config.ConfigProvider;

/** Starts the program, once its data folder is fit for use where it has one. */
@QuarkusMain
public class Staywright {

  private static final String PROPERTY = "staywright.data";
  private static final String VARIABLE = "STAYWRIGHT_DATA";
  private static final String DEFAULT = "./data";

  public static void main(String... args) {
    if (keepsItsDatabaseInAFolder()) {
      prepareFolder();
    }
    Quarkus.run(args);
  }

  /** Unless another address is given. */
  private static boolean keepsItsDatabaseInAFolder() {
    return ConfigProvider.getConfig()
        .getValue("quarkus.datasource.jdbc.url", String.class)
        .startsWith("jdbc:h2:file:");
  }

  private static void prepareFolder() {
    String named = System.getProperty(PROPERTY, System.getenv(VARIABLE));
    try {
      DataFolder folder = DataFolder.prepare(named == null || named.isBlank() ? DEFAULT : named);
      System.setProperty(PROPERTY, folder.path().toString());
    } catch (DataFolder.Unusable e) {
      System.err.println(e.getMessage());
      System.exit(1);
    }
  }
}
