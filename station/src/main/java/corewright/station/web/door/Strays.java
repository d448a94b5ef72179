package corewright.station.web.door;

import java.util.Set;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.RequestLog;
import org.eclipse.jetty.server.Response;

/**
 * What the server itself turned away, before the door or behind it: a path that leads elsewhere, a
 * request that is too large or that nobody can read. It is written down like the rest.
 */
public final class Strays implements RequestLog {
  private static final int BAD = 400;
  private static final int NOT_FOUND = 404;
  private static final int TOO_LARGE = 413;

  /** RFC 9110 and RFC 6585: too long an address, too long a head. */
  private static final Set<Integer> TURNED_AWAY = Set.of(BAD, TOO_LARGE, 414, 431);

  private final DoorBook book;

  public Strays(DoorBook book) {
    this.book = book;
  }

  @Override
  public void log(Request request, Response response) {
    int status = response.getStatus();
    String path = request.getHttpURI().getPath();
    boolean ours = status == NOT_FOUND && path != null && path.startsWith("/static/");
    if (ours || TURNED_AWAY.contains(status)) {
      book.note(
          status == TOO_LARGE ? "request too large" : "path or request that is none",
          "",
          Request.getRemoteAddr(request) + " " + request.getMethod() + " " + path);
    }
  }
}
