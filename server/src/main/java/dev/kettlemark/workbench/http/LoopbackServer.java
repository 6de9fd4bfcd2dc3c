package dev.kettlemark.workbench.http;

import java.io.IOException;
import java.net.BindException;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.TimeUnit;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * Listens on 127.0.0.1, and on nothing else.
 *
 * <p>Each connection has a thread, and there are at most {@link #MOST_CONNECTIONS}. Where one more comes, the oldest
 * that has not shown the cookie makes room, so that a flood of strangers shuts out nobody who is at work.
 */
public final class LoopbackServer implements AutoCloseable {

  /** A browser opens six at a time for each window. */
  static final int MOST_CONNECTIONS = 64;

  private static final Logger LOG = Logger.getLogger(LoopbackServer.class.getName());
  private static final int BACKLOG = 64;
  private static final long PATIENCE_MILLIS = 1000;

  private final ServerSocket listening;
  private final HttpHandler handler;
  private final ExecutorService threads = Executors.newCachedThreadPool(daemon("workbench"));
  private final ScheduledExecutorService clocks =
      Executors.newSingleThreadScheduledExecutor(daemon("workbench-clock"));
  private final Set<Connection> connections = new LinkedHashSet<>();
  private final Thread door = daemon("workbench-door").newThread(this::acceptAll);

  private LoopbackServer(ServerSocket listening, HttpHandler handler) {
    this.listening = listening;
    this.handler = handler;
  }

  /**
   * Begins to listen; {@link #start} begins to answer.
   *
   * @param port 0 for any that is free
   * @throws BindException if the port is taken
   */
  public static ServerSocket listen(int port) throws IOException {
    InetAddress loopback = Inet4Address.getByAddress(new byte[] {127, 0, 0, 1});
    ServerSocket socket = new ServerSocket();
    try {
      // A port that another program has just left may be used again at once.
      socket.setReuseAddress(true);
      socket.bind(new InetSocketAddress(loopback, port), BACKLOG);
      return socket;
    } catch (IOException taken) {
      socket.close();
      throw taken;
    }
  }

  /** Answers whoever comes, from threads of its own. */
  public static LoopbackServer start(ServerSocket listening, HttpHandler handler) {
    LoopbackServer server = new LoopbackServer(listening, handler);
    server.door.start();
    return server;
  }

  /** How many connections are open. */
  public int open() {
    synchronized (connections) {
      return connections.size();
    }
  }

  /** Closes the door and every connection. */
  @Override
  public void close() {
    try {
      listening.close();
      // Until nobody waits at it any more, the system keeps the port.
      door.join(PATIENCE_MILLIS);
    } catch (IOException closed) {
      LOG.log(Level.FINE, "the door was shut already", closed);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
    List<Connection> open;
    synchronized (connections) {
      open = new ArrayList<>(connections);
    }
    // Their threads end by it; an interrupt could keep a session from taking leave of its own
    // threads.
    open.forEach(Connection::close);
    threads.shutdown();
    clocks.shutdownNow();
    try {
      // Whoever is in the middle of a save ends it, or its draft would stay beside the file.
      if (!threads.awaitTermination(PATIENCE_MILLIS, TimeUnit.MILLISECONDS)) {
        LOG.log(Level.FINE, "an answer was still under way");
      }
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }

  private void acceptAll() {
    while (!listening.isClosed()) {
      try {
        admit(listening.accept());
      } catch (IOException refused) {
        LOG.log(Level.FINE, "a connection was not taken", refused);
      }
    }
  }

  private void admit(Socket socket) throws IOException {
    Connection connection = new Connection(socket, clocks);
    synchronized (connections) {
      if (connections.size() >= MOST_CONNECTIONS) {
        Optional<Connection> stranger = oldestStranger();
        if (stranger.isEmpty()) {
          connection.close();
          return;
        }
        stranger.get().close();
      }
      connections.add(connection);
    }
    threads.execute(() -> {
      try {
        connection.serve(handler);
      } finally {
        synchronized (connections) {
          connections.remove(connection);
        }
      }
    });
  }

  private Optional<Connection> oldestStranger() {
    for (Iterator<Connection> each = connections.iterator(); each.hasNext(); ) {
      Connection one = each.next();
      if (!one.isTrusted()) {
        each.remove();
        return Optional.of(one);
      }
    }
    return Optional.empty();
  }

  private static ThreadFactory daemon(String name) {
    return work -> {
      Thread thread = new Thread(work, name);
      thread.setDaemon(true);
      return thread;
    };
  }
}
