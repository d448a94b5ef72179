package corewright.station.work;

import static corewright.files.Section.shown;

import corewright.files.BadFile;
import corewright.files.JsonFile;
import corewright.files.Mistake;
import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.Descriptions;
import corewright.fixtures.describe.Dialect;
import corewright.profiles.Catalogue;
import corewright.profiles.Family;
import corewright.profiles.Profile;
import corewright.reports.document.Shop;
import corewright.reports.document.logo.Logo;
import corewright.reports.document.template.Template;
import corewright.reports.document.template.TemplateReader;
import corewright.reports.document.template.Templates;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/** Whether a file that a person edited may be used, before anything is powered. */
public final class Checking {
  /** The kind of file that can be played. */
  public static final String DIALECT = "instrument dialect";

  /** What has less than half of what a kind demands at the top is not of that kind. */
  private static final double LIKE = 0.5;

  private final Catalogue catalogue;
  private final Home home;
  private final List<Kind> kinds;

  public Checking(Home home) {
    this.catalogue = Catalogue.in(home.families());
    this.home = home;
    this.kinds =
        List.of(
            new Kind(catalogue::likenessToProfile, this::profile),
            new Kind(catalogue::likenessToFamily, this::family),
            new Kind(Descriptions::likenessToBench, this::bench),
            new Kind(Descriptions::likenessToDialect, this::dialect),
            new Kind(ShopFile::likeness, this::shop));
  }

  /**
   * A good file.
   *
   * @param kind what it is, as {@code load-hold profile}
   * @param facts what it says, each a sentence
   * @param cautions what should still be known; often empty
   */
  public record Good(
      Path file,
      String kind,
      String id,
      int revision,
      String title,
      List<String> facts,
      List<Mistake> cautions) {
    public Good {
      facts = List.copyOf(facts);
      cautions = List.copyOf(cautions);
    }
  }

  private record Kind(Function<JsonFile, Double> likeness, Function<Path, Good> read) {}

  /**
   * Recognises a file by what stands in it and checks it.
   *
   * @throws BadFile with every mistake
   */
  public Good check(Path path) {
    if (path.toString().endsWith(".txt")) {
      return template(path);
    }
    JsonFile file = JsonFile.read(path);
    return kinds.stream()
        .filter(k -> k.likeness().apply(file) >= LIKE)
        .max(Comparator.comparing(k -> k.likeness().apply(file)))
        .orElseThrow(
            () ->
                new BadFile(
                    List.of(
                        file.mistake(
                            "",
                            "this is none of: family, profile, bench description, dialect, shop",
                            "Begin with a copy of one that comes with the program"))))
        .read()
        .apply(path);
  }

  /**
   * Checks a profile and whether a bench can run it.
   *
   * @throws BadFile with every mistake, of either file or of the two together
   */
  public Good check(Path path, Path benchPath) {
    Good good = check(path);
    if (catalogue.likenessToProfile(JsonFile.read(path)) < LIKE) {
      throw new Refused(
          path + " is a " + good.kind() + ", and only a profile is run on a bench",
          "Leave --bench out, or name a profile.");
    }
    Profile profile = catalogue.readProfile(path);
    bench(benchPath);
    BenchDescription bench = Descriptions.bench(benchPath);
    Dialects dialects = new Dialects(home, benchPath);
    BenchFit fit =
        new BenchFit(
            JsonFile.read(path),
            profile,
            catalogue.family(profile.family()),
            bench,
            role -> bench.instrument(role).flatMap(c -> dialects.find(c.dialect())));
    JsonFile.refuse(fit.mistakes());
    List<String> facts = new ArrayList<>(good.facts());
    facts.addAll(fit.sentences());
    return new Good(
        path, good.kind(), good.id(), good.revision(), good.title(), facts, good.cautions());
  }

  private Good template(Path path) {
    Template template = TemplateReader.read(path.toString(), Templates.text(path));
    long own = template.sections().stream().filter(s -> !s.paragraphs().isEmpty()).count();
    return new Good(
        path,
        "template of a",
        template.kind().id(),
        1,
        template.kind().id(),
        List.of(
            template.sections().size()
                + " sections, "
                + own
                + " of them with the shop's own words."),
        List.of());
  }

  private Good shop(Path path) {
    Shop shop = ShopFile.of(path);
    shop.logo().ifPresent(Logo::aspect);
    return new Good(
        path,
        "shop",
        shop.name(),
        1,
        shop.name(),
        List.of("Colour " + shop.colour() + ", region " + shop.region().getCountry() + "."),
        List.of());
  }

  private Good profile(Path path) {
    Profile profile = catalogue.readProfile(path);
    double held_s = profile.steps().stream().mapToDouble(s -> s.judged() ? s.hold_s() : 0).sum();
    return new Good(
        path,
        "load-hold profile",
        profile.id(),
        profile.revision(),
        profile.title(),
        List.of(
            "For family " + profile.family() + ".",
            profile.steps().size()
                + " steps, "
                + shown(held_s)
                + " s of holds at "
                + shown(profile.sampleRate_Hz())
                + " samples a second; "
                + profile.limits().size()
                + " limits."),
        catalogue.cautions(path));
  }

  private Good family(Path path) {
    Family family = catalogue.readFamily(path);
    return new Good(
        path,
        "module family",
        family.id(),
        family.revision(),
        family.title(),
        List.of(
            family.variants().size()
                + " variants, "
                + family.cues().size()
                + " cues, "
                + family.checklist().size()
                + " lines of checklist."),
        List.of());
  }

  private Good bench(Path path) {
    BenchDescription bench = Descriptions.bench(path);
    JsonFile file = JsonFile.read(path);
    List<Mistake> found =
        new ArrayList<>(
            BenchFit.references(file, bench, catalogue, new Dialects(home, path)::find));
    found.addAll(NamedReferences.mistakes(file, bench, catalogue));
    JsonFile.refuse(found);
    return new Good(
        path,
        "bench description",
        bench.id(),
        bench.revision(),
        bench.title(),
        List.of("Fixture for " + String.join(", ", bench.fixture().families()) + "."),
        List.of());
  }

  private Good dialect(Path path) {
    Dialect dialect = Descriptions.dialect(path);
    return new Good(
        path,
        DIALECT,
        dialect.id(),
        dialect.revision(),
        dialect.title(),
        List.of("For the role " + dialect.role() + "."),
        List.of());
  }
}
