package corewright.station.web;

import io.javalin.config.JettyConfig;
import org.eclipse.jetty.server.ConnectionFactory;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.SslConnectionFactory;
import org.eclipse.jetty.util.ssl.SslContextFactory;

/** Where the server listens, plainly or over TLS 1.2 and newer. */
final class Listening {
  private Listening() {}

  static void on(JettyConfig jetty, Reach reach) {
    jetty.modifyHttpConfiguration(Listening::quiet);
    jetty.addConnector((server, http) -> connector(server, http, reach));
  }

  private static ServerConnector connector(Server server, HttpConfiguration http, Reach reach) {
    ConnectionFactory[] ways =
        reach
            .tls()
            .map(tls -> secured(http, tls))
            .orElseGet(() -> new ConnectionFactory[] {new HttpConnectionFactory(http)});
    ServerConnector connector = new ServerConnector(server, ways);
    connector.setHost(reach.address());
    connector.setPort(reach.port());
    return connector;
  }

  private static ConnectionFactory[] secured(HttpConfiguration http, Reach.Tls tls) {
    SslContextFactory.Server context = new SslContextFactory.Server();
    context.setKeyStorePath(tls.store().toString());
    context.setKeyStoreType("PKCS12");
    context.setKeyStorePassword(tls.password());
    context.setIncludeProtocols("TLSv1.3", "TLSv1.2");
    SecureRequestCustomizer secure = new SecureRequestCustomizer();
    secure.setSniHostCheck(false); // the door checks the host, bare addresses too
    http.addCustomizer(secure);
    return new ConnectionFactory[] {
      new SslConnectionFactory(context, "http/1.1"), new HttpConnectionFactory(http)
    };
  }

  private static void quiet(HttpConfiguration http) {
    http.setSendServerVersion(false);
  }
}
