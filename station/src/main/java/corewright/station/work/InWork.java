package corewright.station.work;

import corewright.bench.life.Stage;
import corewright.reports.ledger.Standing;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What stands at one stage today, and for how long; what is in stock waits for nobody.
 *
 * @param median_days since it got there, by nearest rank
 * @param oldest_days likewise, of the one that waits longest
 * @param tags the one that waits longest first
 */
public record InWork(Stage stage, long median_days, long oldest_days, List<String> tags) {
  public InWork {
    tags = List.copyOf(tags);
  }

  /** Stage by stage, in the order of a unit's way; stages where nothing stands are left out. */
  static List<InWork> of(List<Standing> here, LocalDate today, ZoneId zone) {
    Map<Stage, List<Standing>> stages = new EnumMap<>(Stage.class);
    here.stream()
        .filter(s -> s.life().stage() != Stage.IN_STOCK)
        .forEach(s -> stages.computeIfAbsent(s.life().stage(), k -> new ArrayList<>()).add(s));
    List<InWork> work = new ArrayList<>();
    stages.forEach(
        (stage, all) -> {
          all.sort(Comparator.comparing(Standing::since).thenComparing(Standing::tag));
          work.add(
              new InWork(
                  stage,
                  age_days(all.get(all.size() / 2), today, zone),
                  age_days(all.get(0), today, zone),
                  all.stream().map(Standing::tag).toList()));
        });
    return work;
  }

  /** Days since a unit got to where it stands: 0 on the day itself. */
  static long age_days(Standing s, LocalDate today, ZoneId zone) {
    return ChronoUnit.DAYS.between(WallClock.day(s.since(), zone), today);
  }
}
