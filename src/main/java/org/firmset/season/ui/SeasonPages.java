package org.firmset.season.ui;

import java.time.LocalDate;
import org.firmset.homestead.store.Homesteads;
import org.firmset.season.Seasons;
import org.firmset.shell.Destination;
import org.firmset.shell.FrameNote;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the frame may know of these pages. */
@Configuration(proxyBeanMethods = false)
public class SeasonPages {
    private static final String LOADS = "loads";

    /** Address of the loads of a trip. @param trip its key */
    static String loads(String trip) {
        return LOADS + "/" + trip;
    }

    /** Address of what a date can hold. */
    static String day(LocalDate date) {
        return "season/day/" + date;
    }

    @Bean
    Destination nextTrip() {
        return new Destination(10, "Next trip", NextTripView.class);
    }

    @Bean
    Destination season() {
        return new Destination(20, "Season", SeasonView.class);
    }

    @Bean
    Destination loads() {
        return new Destination(25, "Loads", LoadsView.class);
    }

    @Bean
    Destination days() {
        return new Destination(27, "Days", DaysView.class);
    }

    @Bean
    Destination stages() {
        return new Destination(30, "Stages", StagesView.class);
    }

    @Bean
    Destination spend() {
        return new Destination(50, "Spend", SpendView.class);
    }

    @Bean
    FrameNote planNote(Homesteads homesteads, Seasons seasons) {
        return () -> new PlanNote(homesteads, seasons);
    }
}
