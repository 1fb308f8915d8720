package org.firmset.homestead.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import org.firmset.homestead.Trailer;
import org.firmset.measure.Length;
import org.firmset.measure.Mass;
import org.firmset.measure.Volume;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "trailer")
class TrailerRow extends KeyedRow<Trailer> {
    private String name;

    @Column(name = "gross_rating_kg")
    private Mass grossRating;

    @Column(name = "empty_mass_kg")
    private Mass emptyMass;

    private int tonguePercent;

    @Column(name = "deck_volume_m3")
    private Volume deckVolume;

    @Column(name = "longest_piece_m")
    private Length longestPiece;

    private @Nullable DeckColumns deck;

    protected TrailerRow() {}

    TrailerRow(Slot slot, Trailer record, Named named) {
        super(slot);
        become(record, named);
    }

    @Override
    void become(Trailer record, Named named) {
        name = record.name();
        grossRating = record.grossRating();
        emptyMass = record.emptyMass();
        tonguePercent = record.tonguePercent();
        deckVolume = record.deckVolume();
        longestPiece = record.longestPiece();
        deck = DeckColumns.of(record.deck());
    }

    @Override
    Trailer toRecord() {
        return new Trailer(
                key(),
                name,
                grossRating,
                emptyMass,
                tonguePercent,
                deckVolume,
                longestPiece,
                deck == null ? null : deck.toRecord());
    }
}
