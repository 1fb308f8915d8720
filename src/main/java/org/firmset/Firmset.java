package org.firmset;

import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.firmset.cli.Commands;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.boot.context.properties.ConfigurationPropertiesScan;

/** Starts the web pages, or runs a command of the terminal without them. */
@SpringBootApplication
@ConfigurationPropertiesScan
public class Firmset {
    /** Held, because a logger that nobody holds forgets its level. */
    private static final Logger MONEY_LOG = Logger.getLogger("org.javamoney");

    public static void main(String[] arguments) {
        List<String> words = List.of(arguments);
        if (Commands.holds(words)) {
            // its greeting would stand in what the command prints
            MONEY_LOG.setLevel(Level.WARNING);
            System.exit(new Commands(System.out, System.err).run(words));
        }
        SpringApplication.run(Firmset.class, arguments);
    }
}
