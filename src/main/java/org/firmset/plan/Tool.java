package org.firmset.plan;

/**
 * A tool that stages share. On a site day each piece of it serves one stage.
 *
 * @param count how many of it there are, 0 or more
 */
public record Tool(String id, String name, int count) {
    public Tool {
        Require.notNegative(count, "count", "tool", id);
    }
}
