package org.firmset.homestead.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import org.firmset.homestead.Deck;
import org.firmset.measure.Length;
import org.firmset.measure.Mass;
import org.jspecify.annotations.Nullable;

@Embeddable
record DeckColumns(
        @Column(name = "deck_axle_m") Length axle,
        @Column(name = "deck_front_m") Length front,
        @Column(name = "deck_length_m") Length length,
        @Column(name = "deck_axle_rating_kg") @Nullable Mass axleRating) {

    static @Nullable DeckColumns of(@Nullable Deck deck) {
        return deck == null ? null : new DeckColumns(deck.axle(), deck.front(), deck.length(), deck.axleRating());
    }

    Deck toRecord() {
        return new Deck(axle, front, length, axleRating);
    }
}
