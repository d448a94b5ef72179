package corewright.station.web.place;

import corewright.reports.ledger.Attached;
import corewright.station.web.House;
import corewright.station.work.Photographs;
import corewright.station.work.Photographs.Taken;
import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Takes photographs out of a form; each field is named by what it shows. */
final class PhotoDesk {
  private static final String FIELD = "photo-";

  private final House house;

  PhotoDesk(House house) {
    this.house = house;
  }

  /** Photographs of a form that wait to be kept; closing throws them away. */
  record Pile(List<Taken> photos) implements AutoCloseable {
    @Override
    public void close() {
      photos.forEach(Taken::close);
    }
  }

  /**
   * Looks at all of them before anything is written.
   *
   * @throws corewright.station.work.Refused if one is too large or no picture
   */
  Pile take(Context context) {
    Map<String, String> shows = new LinkedHashMap<>();
    for (Side side : Side.values()) {
      shows.put(FIELD + side.words(), side.words());
    }
    return take(context, shows);
  }

  /** The same of one field alone. */
  Pile take(Context context, String field, String shows) {
    return take(context, Map.of(field, shows));
  }

  private Pile take(Context context, Map<String, String> shows) {
    List<Taken> taken = new ArrayList<>();
    try {
      for (Map.Entry<String, String> field : shows.entrySet()) {
        for (UploadedFile file : context.uploadedFiles(field.getKey())) {
          if (file.size() > 0) {
            taken.add(take(file, field.getValue()));
          }
        }
      }
      return new Pile(List.copyOf(taken));
    } catch (RuntimeException refused) {
      taken.forEach(Taken::close);
      throw refused;
    }
  }

  private Taken take(UploadedFile file, String shows) {
    try (InputStream in = file.content()) {
      return house.workshop().photographs().take(in, shows);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read a photograph of the " + shows, e);
    }
  }

  /** Photographs of a unit, all visits. */
  List<Attached> kept(String tag) {
    return house.workshop().ledger().lives().attached(tag).stream()
        .filter(a -> a.kind().equals("photo"))
        .toList();
  }

  void keep(String tag, Pile pile, String who) {
    Photographs photographs = house.workshop().photographs();
    pile.photos().forEach(p -> photographs.keep(tag, p, who));
  }
}
