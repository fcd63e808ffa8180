package org.staywright.web;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;

/** The pages, one checked template each. */
@CheckedTemplate(basePath = "")
final class Templates {

  private Templates() {}

  static native TemplateInstance start();
}
