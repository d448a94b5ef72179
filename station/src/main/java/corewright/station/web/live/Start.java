package corewright.station.web.live;

import java.util.Optional;

/**
 * Who wants to run what.
 *
 * @param profile its id
 * @param driver who has confirmed the cautions and drives
 * @param second who else is there; demanded above 60 V DC
 */
record Start(String tag, String profile, String driver, Optional<String> second) {}
