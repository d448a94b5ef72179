package corewright.reports.ledger;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import javax.sql.DataSource;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.postgresql.ds.PGSimpleDataSource;
import org.sqlite.SQLiteDataSource;

/** The databases that can keep a ledger; what holds on one must hold on the other. */
enum Kept {
  SQLITE {
    @Override
    String url(Path folder, String name) {
      return Urls.of(folder.resolve(name + ".db"));
    }

    @Override
    void make(String url) {
      Path file = Path.of(url.substring(Urls.SQLITE.length()));
      try {
        if (Files.notExists(file)) {
          Files.write(file, Empty.BYTES);
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    @Override
    void unguard(Handle handle) {
      handle
          .select("SELECT name FROM sqlite_master WHERE type = 'trigger'")
          .mapTo(String.class)
          .list()
          .forEach(trigger -> handle.execute("DROP TRIGGER " + trigger));
      handle.execute("PRAGMA foreign_keys = OFF");
    }
  },

  POSTGRESQL {
    @Override
    String url(Path folder, String name) {
      return Server.url("l" + Hashes.of(folder.resolve(name).toString()).substring(0, 16));
    }

    @Override
    void make(String url) {
      Server.make(Server.database(url));
    }

    /** As the database's own keeper can. */
    @Override
    void unguard(Handle handle) {
      handle.execute("SET session_replication_role = replica");
    }
  };

  /** A database without any table, at this schema of the ledger. */
  final void makeAt(String url, int schema) {
    if (this == POSTGRESQL) {
      Server.ask("CREATE DATABASE " + Server.database(url));
    }
    Migrations.valueOf(name()).run(source(url), schema);
  }

  private static DataSource source(String url) {
    if (url.startsWith(Urls.SQLITE)) {
      SQLiteDataSource file = new SQLiteDataSource();
      file.setUrl(url);
      return file;
    }
    PGSimpleDataSource shared = new PGSimpleDataSource();
    shared.setUrl(url);
    return shared;
  }

  /** Where a test keeps its ledger. */
  abstract String url(Path folder, String name);

  final String url(Path folder) {
    return url(folder, "ledger");
  }

  /** Makes an empty ledger there, if there is none; quicker than one migration after the other. */
  abstract void make(String url);

  final Ledger open(Path folder, String chain, Clock clock) {
    make(url(folder));
    return Ledger.open(url(folder), chain, clock, Optional.empty());
  }

  final Ledger open(Path folder, String chain, Clock clock, SigningKey key) {
    make(url(folder));
    return Ledger.open(url(folder), chain, clock, Optional.of(key));
  }

  /** Takes away what guards the events, for this connection. */
  abstract void unguard(Handle handle);

  /** A ledger's file without an event in it. */
  private static final class Empty {
    private static final byte[] BYTES = bytes();

    private static byte[] bytes() {
      try {
        Path folder = Files.createTempDirectory("empty");
        Path file = folder.resolve("ledger.db");
        Ledger.open(file, "x", Clock.systemUTC()).close();
        return Files.readAllBytes(file);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  /** A real server, started once for all tests of a process and stopped with it. */
  static final class Server {
    private static final EmbeddedPostgres STARTED = start();
    private static final Set<String> MADE = ConcurrentHashMap.newKeySet();
    private static final String EMPTY = "empty_ledger";

    private Server() {}

    static String url(String database) {
      return STARTED.getJdbcUrl("postgres", database);
    }

    private static String database(String url) {
      return url.substring(url.lastIndexOf('/') + 1, url.indexOf('?'));
    }

    private static void make(String database) {
      if (MADE.add(database)) {
        if (MADE.add(EMPTY)) {
          ask("CREATE DATABASE " + EMPTY);
          Ledger.open(url(EMPTY), "x", Clock.systemUTC(), Optional.empty()).close();
        }
        ask("CREATE DATABASE " + database + " TEMPLATE " + EMPTY);
      }
    }

    private static void ask(String sql) {
      Jdbi.create(url("postgres")).useHandle(handle -> handle.execute(sql));
    }

    private static EmbeddedPostgres start() {
      try {
        return EmbeddedPostgres.start();
      } catch (IOException e) {
        throw new UncheckedIOException("no PostgreSQL for the tests", e);
      }
    }
  }
}
