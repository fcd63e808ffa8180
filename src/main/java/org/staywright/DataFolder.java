package org.staywright;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * The folder with the database.
 *
 * @param path absolute
 */
record DataFolder(Path path) {

  /** Name of the database's file, as in the address of the data source. */
  private static final String FILE = "staywright.mv.db";

  /** What would end or bend the database's address. */
  private static final String UNFIT = "[;\"${}\\p{Cntrl}]";

  /**
   * The folder as named, from the working folder.
   *
   * @throws CannotStart with a sentence that says why
   */
  static DataFolder prepare(String name) {
    Path path;
    try {
      path = Path.of(name).toAbsolutePath().normalize();
    } catch (InvalidPathException e) {
      throw new CannotStart("start.folder-name", name);
    }
    if (path.toString().replaceAll(UNFIT, "").length() < path.toString().length()) {
      throw new CannotStart("start.folder-name", path);
    }
    DataFolder folder = new DataFolder(path);
    try {
      Files.createDirectories(path);
      Files.delete(Files.createTempFile(path, "write", ".tmp"));
      folder.refuseIfInUse();
    } catch (IOException | SecurityException e) {
      throw new CannotStart("start.folder-not-writable", path);
    }
    return folder;
  }

  /** The database locks its file in the same way, and would tell it at far greater length. */
  private void refuseIfInUse() throws IOException {
    Path file = path.resolve(FILE);
    if (!Files.exists(file)) {
      return;
    }
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
      FileLock lock = channel.tryLock();
      if (lock == null) {
        throw new CannotStart("start.folder-in-use", path);
      }
      lock.release();
    }
  }
}
