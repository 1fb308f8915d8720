package org.firmset.homestead;

import org.firmset.measure.Described;
import org.firmset.measure.Volume;

@Described("What keeps things dry on site.")
public record Storage(
        @Described(value = "Room that stays dry.", least = "0 m3", most = "10000 m3")
        Volume dryVolume) {}
