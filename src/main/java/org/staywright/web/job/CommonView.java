package org.staywright.web.job;

import java.util.List;

/**
 * One parts list for several jobs.
 *
 * @param jobs ticked, in their order
 * @param missing those that are gone or have nothing chosen, in words
 * @param files of the list
 * @param list of what all of them need, null where there is none
 */
public record CommonView(
    List<JobsView.Row> jobs, List<String> missing, List<FileLink> files, ListView list) {}
