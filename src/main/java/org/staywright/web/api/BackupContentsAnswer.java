package org.staywright.web.api;

import java.time.Instant;
import java.util.Map;
import org.staywright.backup.Contents;

/**
 * What a backup holds.
 *
 * @param schema version of its tables
 * @param rows number of them, by table
 */
public record BackupContentsAnswer(
    boolean restored, Instant created, String schema, Map<String, Long> rows) {

  static BackupContentsAnswer of(Contents contents, boolean restored) {
    return new BackupContentsAnswer(
        restored, contents.created(), contents.schema(), contents.rows());
  }
}
