package org.firmset.season.ui;

import org.firmset.homestead.store.Homesteads;
import org.firmset.season.Seasons;
import org.firmset.shell.Destination;
import org.firmset.shell.FrameNote;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the frame may know of these pages. */
@Configuration(proxyBeanMethods = false)
public class SeasonPages {
    @Bean
    Destination nextTrip() {
        return new Destination(10, "Next trip", NextTripView.class);
    }

    @Bean
    Destination season() {
        return new Destination(20, "Season", SeasonView.class);
    }

    @Bean
    Destination stages() {
        return new Destination(30, "Stages", StagesView.class);
    }

    @Bean
    FrameNote planNote(Homesteads homesteads, Seasons seasons) {
        return () -> new PlanNote(homesteads, seasons);
    }
}
