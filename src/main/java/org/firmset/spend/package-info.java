/**
 * Where the money went and where it will end: receipts, sharing costs to the cent, forecasts, prices, hire or buy. Pure:
 * records in, records out. Amounts are {@link org.javamoney.moneta.Money}; rules and sources are in docs/spend.md.
 */
@NullMarked
package org.firmset.spend;

import org.jspecify.annotations.NullMarked;
