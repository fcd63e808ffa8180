package org.staywright;

import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.annotations.QuarkusMain;

/** Starts the program, once its data folder is fit for use. */
@QuarkusMain
public class Staywright {

  private static final String PROPERTY = "staywright.data";
  private static final String VARIABLE = "STAYWRIGHT_DATA";
  private static final String DEFAULT = "./data";

  public static void main(String... args) {
    String named = System.getProperty(PROPERTY, System.getenv(VARIABLE));
    try {
      DataFolder folder = DataFolder.prepare(named == null || named.isBlank() ? DEFAULT : named);
      System.setProperty(PROPERTY, folder.path().toString());
    } catch (DataFolder.Unusable e) {
      System.err.println(e.getMessage());
      System.exit(1);
    }
    Quarkus.run(args);
  }
}
