package org.staywright.stock;

import io.quarkus.narayana.jta.runtime.TransactionConfiguration;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityExistsException;
import jakarta.persistence.LockTimeoutException;
import jakarta.persistence.PessimisticLockException;
import jakarta.transaction.Transactional;
import jakarta.transaction.Transactional.TxType;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.hibernate.exception.ConstraintViolationException;
import org.staywright.database.Audit;
import org.staywright.database.Author;
import org.staywright.database.Author.Standing;
import org.staywright.database.Change;
import org.staywright.database.Change.Action;
import org.staywright.database.Change.Subject;
import org.staywright.form.schema.AnswerJson;
import org.staywright.form.stock.StockRow;
import org.staywright.part.Fitting;
import org.staywright.part.Part;
import org.staywright.part.Range;

/**
 * The revisions of the range in the database. A revision, once there, never changes: what was
 * chosen from it can be looked up for good.
 */
@ApplicationScoped
public class Stock {

  /** Longer than a million rows take, in seconds. */
  private static final int A_DAY = 86_400;

  private final StockRows rows;
  private final Audit audit;

  public Stock(StockRows rows, Audit audit) {
    this.rows = rows;
    this.audit = audit;
  }

  /** The newest revision, 0 where there is none yet. */
  @Transactional
  public int newest() {
    return Revision.newest();
  }

  /** All revisions, the newest first. */
  @Transactional
  public List<Revision> revisions() {
    return Revision.all();
  }

  /** A part as it stood in a revision. */
  public Optional<Part> part(String number, int revision) {
    return rows.part(number, revision);
  }

  /** A fitting as it stood in a revision. */
  public Optional<Fitting> fitting(String number, int revision) {
    return rows.fitting(number, revision);
  }

  /** The whole range of a revision; an empty one is a range too. */
  public Range range(int revision) {
    return rows.range(revision);
  }

  /**
   * Makes a first revision, all of it or nothing: by itself, nobody has asked for it.
   *
   * @param origin where the rows come from
   * @return its number, or empty where there is a revision already
   */
  public Optional<Integer> begin(String origin, List<Part> parts, List<Fitting> fittings) {
    try {
      return Optional.of(
          revise(
              Author.PROGRAM,
              0,
              origin,
              changing -> {
                parts.forEach(part -> changing.put(new StockRow(part, null), false));
                fittings.forEach(fitting -> changing.put(new StockRow(null, fitting), false));
              }));
    } catch (Overtaken alreadyThere) {
      return Optional.empty();
    }
  }

  /** What a revision is made with. */
  public interface Revising {
    void with(Changing changing) throws IOException;
  }

  /** Takes changes one by one. */
  public interface Changing {
    void put(StockRow row, boolean known);

    void gone(String number, boolean fitting);
  }

  /**
   * Makes a revision out of the newest, all of it or nothing.
   *
   * @param base the newest, as the maker knows it
   * @return its number
   * @throws Overtaken where another revision came in between
   */
  @Transactional(TxType.REQUIRES_NEW)
  @TransactionConfiguration(timeout = A_DAY)
  public int revise(Author author, int base, String origin, Revising work) {
    int revision = next(base, origin);
    rows.change(revision, work);
    boolean asked = author.standing() != Standing.PROGRAM;
    note(author, asked ? Action.IMPORTED : Action.LOADED, base, revision);
    return revision;
  }

  /**
   * Makes an earlier revision hold again, as a new one.
   *
   * @return its number
   */
  @Transactional(TxType.REQUIRES_NEW)
  @TransactionConfiguration(timeout = A_DAY)
  public int restore(Author author, int earlier, String origin) {
    int newest = Revision.newest();
    int revision = next(newest, origin);
    rows.restore(earlier, revision);
    note(author, Action.RESTORED, newest, revision);
    return revision;
  }

  private void note(Author author, Action action, int base, int revision) {
    String id = Integer.toString(revision);
    String before = base == 0 ? null : held(base);
    audit.note(author, new Change(Subject.RANGE, id, action, before, held(revision)));
  }

  private String held(int number) {
    return AnswerJson.tree(rows.summary(number)).toString();
  }

  private static int next(int base, String origin) {
    try {
      Revision.hold();
      if (Revision.newest() != base) {
        throw new Overtaken(base);
      }
      Revision next = new Revision(base + 1, origin);
      next.persistAndFlush();
      return next.number();
    } catch (PessimisticLockException | LockTimeoutException tooLong) {
      // Someone else makes one for longer than the database waits.
      throw new Overtaken(base);
    } catch (EntityExistsException | ConstraintViolationException other) {
      // Two at once want the same number: the database lets one have it.
      throw new Overtaken(base);
    }
  }

  /**
   * Waits for whoever makes a revision or replaces them all, and holds off the next until the
   * caller's transaction ends.
   */
  @Transactional(TxType.MANDATORY)
  public void hold() {
    Revision.hold();
  }

  /** How one revision differs from another, with the first thousand of each kind. */
  public RevisionDifference difference(int from, int to) {
    return difference(from, to, 0, 1000);
  }

  /**
   * How one revision differs from another.
   *
   * @param skipped of each kind
   * @param most listed of each kind after those
   */
  public RevisionDifference difference(int from, int to, int skipped, int most) {
    return rows.difference(from, to, skipped, most);
  }
}
