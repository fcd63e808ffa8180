package org.staywright;

import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Another process with the database open: holds a file's lock until it is ended. */
final class HoldsALock {

  private HoldsALock() {}

  public static void main(String[] args) throws Exception {
    try (FileChannel channel = FileChannel.open(Path.of(args[0]), StandardOpenOption.WRITE)) {
      channel.lock();
      System.out.print('!');
      System.out.flush();
      Thread.sleep(60_000);
    }
  }
}
