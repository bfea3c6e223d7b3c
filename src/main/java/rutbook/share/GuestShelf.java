package rutbook.share;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The coach's shelf: every rider's bike there is a file of, who waits first. */
public record GuestShelf(List<Guest> guests) {
  private static final Comparator<Guest> ORDER =
      Comparator.comparing((Guest guest) -> guest.waiting() == 0)
          .thenComparing(Guest::lastHandedOver, Comparator.reverseOrder())
          .thenComparing(Guest::rider)
          .thenComparing(Guest::bike);

  public GuestShelf {
    guests = guests.stream().sorted(ORDER).toList();
  }

  /** The shelf of some files, in whatever order they were found. */
  public static GuestShelf of(List<GuestFile> files) {
    Map<Guest.Key, List<GuestFile>> together = new LinkedHashMap<>();
    for (GuestFile file : files) {
      together.computeIfAbsent(Guest.Key.of(file), key -> new ArrayList<>()).add(file);
    }
    return new GuestShelf(together.values().stream().map(Guest::new).toList());
  }

  /** Those whose rider, bike or file has all the words in its name, in whatever case. */
  public GuestShelf search(String words) {
    List<String> wanted = List.of(words.toLowerCase(Locale.ROOT).strip().split("\\s+"));
    return new GuestShelf(guests.stream().filter(guest -> has(guest, wanted)).toList());
  }

  private static boolean has(Guest guest, List<String> words) {
    StringBuilder text = new StringBuilder(guest.rider()).append(' ').append(guest.bike());
    guest.files().forEach(file -> text.append(' ').append(file.name()));
    String all = text.toString().toLowerCase(Locale.ROOT);
    return words.stream().allMatch(all::contains);
  }
}
