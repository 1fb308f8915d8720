package org.firmset.season.money;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** What the parts of the reckoning write down: who will bear what, and when which money is to be there. */
final class Ledger {
    final List<Coming> coming = new ArrayList<>();
    final List<Payment> payments = new ArrayList<>();
    final TreeSet<String> unpriced = new TreeSet<>();
}
