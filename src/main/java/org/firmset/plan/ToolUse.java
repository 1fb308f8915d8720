package org.firmset.plan;

/**
 * How many pieces of a tool a stage keeps in use on every day it works.
 *
 * @param tool id of the tool
 * @param count 1 or more
 */
public record ToolUse(String tool, int count) {
    public ToolUse {
        Require.that(count >= 1, "count [%d] of tool [%s] in use must be 1 or more", count, tool);
    }
}
