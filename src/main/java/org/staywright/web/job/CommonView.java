package org.staywright.web.job;

import java.util.List;
import org.staywright.web.field.Labelled;

/**
 * One parts list for several jobs.
 *
 * @param jobs ticked, in their order
 * @param missing those that are gone or have nothing chosen, in words
 * @param files of the list
 * @param choices who made the choice of each, as far as it was noted
 * @param list of what all of them need, null where there is none
 */
public record CommonView(
    List<JobsView.Row> jobs,
    List<String> missing,
    List<FileLink> files,
    List<Labelled> choices,
    ListView list) {}
