package org.staywright.web.api;

import jakarta.ws.rs.HttpMethod;
import jakarta.ws.rs.Path;
import java.lang.annotation.Annotation;
import java.lang.reflect.Method;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Which methods an address takes, for the header that RFC 9110 wants beside a 405. */
public final class Allowed {

  private static final List<Method> METHODS =
      Stream.of(
              PartResource.class,
              FittingResource.class,
              FitResource.class,
              ReplacementResource.class,
              MountsResource.class,
              CentreResource.class,
              TaskResource.class,
              BatchResource.class,
              ImportResource.class,
              StockResource.class,
              BackupResource.class,
              JobResource.class,
              PartsListResource.class,
              CommonListResource.class,
              ChangeResource.class)
          .flatMap(resource -> Stream.of(resource.getDeclaredMethods()))
          .filter(method -> routes(method).findAny().isPresent())
          .toList();

  private static final List<Served> ROUTES = METHODS.stream().flatMap(Allowed::routes).toList();

  /** An address and one method it takes. */
  private record Served(String path, String method) {}

  private Allowed() {}

  /** "GET, POST". */
  static String at(String path) {
    String plain = path.replaceFirst("(?<=.)/$", "");
    return ROUTES.stream()
        .filter(route -> plain.matches(route.path().replaceAll("\\{[^}]*}", "[^/]+")))
        .map(Served::method)
        .collect(Collectors.toCollection(TreeSet::new))
        .stream()
        .collect(Collectors.joining(", "));
  }

  /** "GET /api/v1/parts" and all the others. */
  public static List<String> routes() {
    return ROUTES.stream().map(route -> route.method() + " " + route.path()).toList();
  }

  /** What serves them: each is named as its operation is in the interface document. */
  public static List<Method> methods() {
    return METHODS;
  }

  private static Stream<Served> routes(Method method) {
    Path inner = method.getAnnotation(Path.class);
    String path =
        method.getDeclaringClass().getAnnotation(Path.class).value()
            + (inner == null ? "" : "/" + inner.value());
    return Stream.of(method.getAnnotations())
        .map(Annotation::annotationType)
        .filter(type -> type.isAnnotationPresent(HttpMethod.class))
        .map(type -> new Served(path, type.getAnnotation(HttpMethod.class).value()));
  }
}
