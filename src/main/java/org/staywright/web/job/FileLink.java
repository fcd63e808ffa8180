package org.staywright.web.job;

import java.util.List;
import org.staywright.document.job.OrderFile;
import org.staywright.wording.Wording;

/**
 * Where a file is to be had.
 *
 * @param shown whether it is looked at rather than kept
 */
public record FileLink(String address, String title, boolean shown) {

  /**
   * @param folder before the names of the files
   * @param query behind them
   */
  static List<FileLink> of(List<OrderFile> files, String folder, String query, Wording wording) {
    return files.stream()
        .map(file -> new FileLink(folder + file.file() + query, file.title(wording), file.shown()))
        .toList();
  }
}
