package org.firmset.plan;

import java.util.List;

/**
 * The chain of stages, waits and gaps that sets a finish, first link first.
 *
 * @param subproject whose finish it sets
 */
public record CriticalPath(String subproject, List<PathLink> links) {
    public CriticalPath {
        links = List.copyOf(links);
    }
}
