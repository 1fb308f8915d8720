package org.firmset.season.money;

import org.firmset.measure.Worded;

/** What a payment is for. */
public enum Purpose implements Worded {
    PACKS("packs"),
    PAID_DOWN("paid down on orders"),
    REST_OF_ORDER("rest of orders"),
    DELIVERY("deliveries"),
    DRIVE("drives"),
    FOOD("food"),
    GENERATOR("generator's fuel"),
    TOOL("tools and hire"),
    ITEM("permits and the like");

    private final String words;

    Purpose(String words) {
        this.words = words;
    }

    @Override
    public String words() {
        return words;
    }
}
