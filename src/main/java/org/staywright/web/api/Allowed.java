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
final class Allowed {

  private static final List<Route> ROUTES =
      Stream.of(
              PartResource.class,
              FittingResource.class,
              FitResource.class,
              JobResource.class,
              PartsListResource.class)
          .flatMap(resource -> Stream.of(resource.getDeclaredMethods()).flatMap(Allowed::routes))
          .toList();

  /** A pattern of addresses and one method it takes. */
  private record Route(String pattern, String method) {}

  private Allowed() {}

  /** "GET, POST". */
  static String at(String path) {
    String plain = path.replaceFirst("(?<=.)/$", "");
    return ROUTES.stream()
        .filter(route -> plain.matches(route.pattern()))
        .map(Route::method)
        .collect(Collectors.toCollection(TreeSet::new))
        .stream()
        .collect(Collectors.joining(", "));
  }

  private static Stream<Route> routes(Method method) {
    Path inner = method.getAnnotation(Path.class);
    String path =
        method.getDeclaringClass().getAnnotation(Path.class).value()
            + (inner == null ? "" : "/" + inner.value());
    String pattern = path.replaceAll("\\{[^}]*}", "[^/]+");
    return Stream.of(method.getAnnotations())
        .map(Annotation::annotationType)
        .filter(type -> type.isAnnotationPresent(HttpMethod.class))
        .map(type -> new Route(pattern, type.getAnnotation(HttpMethod.class).value()));
  }
}
