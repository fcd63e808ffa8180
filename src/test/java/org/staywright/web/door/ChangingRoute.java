package org.staywright.web.door;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
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

  private static final JavaClasses WEB =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("org.staywright.web");

  private static final List<ChangingRoute> ALL = of(METHODS);

  public static Stream<ChangingRoute> all() {
    return ALL.stream();
  }

  /** Those that change nothing, in the same way. */
  public static Stream<ChangingRoute> reading() {
    return of(List.of(GET.class)).stream();
  }

  /** Their addresses, filled likewise. */
  static Stream<String> told() {
    return reading().map(ChangingRoute::filled).distinct().sorted();
  }

  private static List<ChangingRoute> of(List<Class<? extends Annotation>> verbs) {
    return WEB.stream()
        .flatMap(each -> each.getMethods().stream())
        .flatMap(method -> of(method, verbs))
        .sorted(Comparator.comparing(ChangingRoute::path))
        .toList();
  }

  private static Stream<ChangingRoute> of(
      JavaMethod method, List<Class<? extends Annotation>> verbs) {
    return verbs.stream()
        .filter(method::isAnnotatedWith)
        .flatMap(
            verb ->
                owners(method.getOwner())
                    .map(owner -> new ChangingRoute(verb.getSimpleName(), path(owner, method))));
  }

  /** Pages that are alike have their methods from one class, and each its own address. */
  private static Stream<JavaClass> owners(JavaClass owner) {
    return owner.getModifiers().contains(JavaModifier.ABSTRACT)
        ? owner.getAllSubclasses().stream()
        : Stream.of(owner);
  }

  private static String path(JavaClass owner, JavaMethod method) {
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
