package org.staywright.web.door;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.PATCH;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import java.lang.annotation.Annotation;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** A method and address under which something may change, as the classes of the program say. */
public record ChangingRoute(String method, String path) {

  private static final List<Class<? extends Annotation>> METHODS =
      List.of(POST.class, PUT.class, PATCH.class, DELETE.class);

  private static final JavaClasses OURS =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("org.staywright.web");

  private static final List<ChangingRoute> ALL =
      methods()
          .flatMap(ChangingRoute::of)
          .sorted(Comparator.comparing(ChangingRoute::path))
          .toList();

  public static Stream<ChangingRoute> all() {
    return ALL.stream();
  }

  /** Addresses under which something is only told, filled likewise. */
  static Stream<String> told() {
    return methods()
        .filter(method -> method.isAnnotatedWith(GET.class))
        .map(method -> new ChangingRoute("GET", path(method)).filled())
        .distinct()
        .sorted();
  }

  private static Stream<JavaMethod> methods() {
    return OURS.stream().flatMap(each -> each.getMethods().stream());
  }

  private static Stream<ChangingRoute> of(JavaMethod method) {
    return METHODS.stream()
        .filter(method::isAnnotatedWith)
        .map(verb -> new ChangingRoute(verb.getSimpleName(), path(method)));
  }

  private static String path(JavaMethod method) {
    JavaClass owner = method.getOwner();
    String outer =
        owner.isAnnotatedWith(Path.class) ? owner.getAnnotationOfType(Path.class).value() : "";
    String inner =
        method.isAnnotatedWith(Path.class) ? method.getAnnotationOfType(Path.class).value() : "";
    return (outer + "/" + inner).replaceAll("/+", "/").replaceAll("(?<=.)/$", "");
  }

  public boolean ofInterface() {
    return path.startsWith("/api");
  }

  /** With a name that is nobody's where one is to be filled in. */
  public String filled() {
    return path.replaceAll("\\{[^}]*}", "1");
  }

  @Override
  public String toString() {
    return method + " " + path;
  }
}
