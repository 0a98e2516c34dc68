package soakloop.scenario;

import java.util.List;
import soakloop.exchange.Fin;
import soakloop.exchange.LouvredFin;
import soakloop.exchange.OffsetStripFin;
import soakloop.exchange.PlainFin;

/** Reads a sheet of fins as a catalogue or a tape measure gives it. */
final class FinReader {
  private static final String OFFSET = "offset-strip";
  private static final String LOUVRED = "louvred";
  private static final List<String> LOUVRES =
      List.of("louvre-pitch", "louvre-share", "louvre-angle");

  private final In in;
  private final boolean louvres;

  /**
   * Reads a section.
   *
   * @param in the section
   * @param louvres whether its fins may be louvred
   */
  FinReader(In in, boolean louvres) {
    this.in = in;
    this.louvres = louvres;
  }

  /** What a sheet has whatever its kind, m. */
  private record Sheet(double gap, double height, double thickness) {}

  /**
   * Returns the fins.
   *
   * @param tubeHeight height of the tubes or coolant layers that they stand between, m
   */
  Fin read(double tubeHeight) {
    String kind = in.choice("kind");
    Sheet sheet = sheet();
    Fin fin =
        switch (kind) {
          case OFFSET ->
              new OffsetStripFin(
                  sheet.gap(), sheet.height(), sheet.thickness(), in.number("strip"));
          case LOUVRED -> louvred(sheet, tubeHeight);
          default -> new PlainFin(sheet.gap(), sheet.height(), sheet.thickness());
        };
    if (!kind.equals(OFFSET)) {
      in.refuse("strip", "goes with offset-strip fins; these are " + kind);
    }
    if (louvres && !kind.equals(LOUVRED)) {
      LOUVRES.forEach(k -> in.refuse(k, "goes with louvred fins; these are " + kind));
    }
    in.done();
    return fin;
  }

  /** The free height and gap; ranges of the key table leave both above zero. */
  private Sheet sheet() {
    double density = in.number("density");
    double height = in.number("height");
    double thickness = in.number("sheet");
    return new Sheet(Fin.gapAt(density, thickness), height - thickness, thickness);
  }

  private Fin louvred(Sheet sheet, double tubeHeight) {
    double pitch = in.number("louvre-pitch");
    double share = in.number("louvre-share");
    double angle = in.number("louvre-angle");
    return new LouvredFin(
        sheet.gap(),
        sheet.height(),
        sheet.thickness(),
        new LouvredFin.Louvres(pitch, share * sheet.height(), angle, tubeHeight));
  }
}
