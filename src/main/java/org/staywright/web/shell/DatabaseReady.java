package org.staywright.web.shell;

import jakarta.enterprise.context.ApplicationScoped;
import org.eclipse.microprofile.health.HealthCheck;
import org.eclipse.microprofile.health.HealthCheckResponse;
import org.eclipse.microprofile.health.Readiness;
import org.jboss.logging.Logger;
import org.staywright.stock.Stock;

/**
 * Ready while the database answers a question that every page asks. A connection alone would not
 * do: a database can be reached and yet be empty or not ours.
 */
@Readiness
@ApplicationScoped
public class DatabaseReady implements HealthCheck {

  private static final Logger LOG = Logger.getLogger(DatabaseReady.class);
  private static final String NAME = "database";

  private final Stock stock;

  DatabaseReady(Stock stock) {
    this.stock = stock;
  }

  @Override
  public HealthCheckResponse call() {
    try {
      return HealthCheckResponse.named(NAME).up().withData("revision", stock.newest()).build();
    } catch (RuntimeException gone) {
      LOG.warnf("the database does not answer: %s", gone.getCause());
      return HealthCheckResponse.named(NAME).down().build();
    }
  }
}
