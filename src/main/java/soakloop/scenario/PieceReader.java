package soakloop.scenario;

import java.util.Locale;
import java.util.Optional;
import soakloop.fluid.Coolant;
import soakloop.rig.Core;
import soakloop.rig.Day;
import soakloop.rig.Hose;
import soakloop.rig.LoopElement;
import soakloop.rig.Materials;

/** Reads one piece of the loop by its name. */
final class PieceReader {
  /**
   * Smallest cell of a hose unless its scenario says otherwise, m3: smaller ones only cost time.
   */
  private static final double CELL_VOLUME = 0.1e-3;

  private final In root;
  private final Day day;
  private final Coolant coolant;
  private final Hydraulics hydraulics;
  private final PressureLossReader losses;
  private final PieceNames names;
  private final ReservoirReader tanks;

  PieceReader(In root, Day day, Coolant coolant, Hydraulics hydraulics, PieceNames names) {
    this.root = root;
    this.day = day;
    this.coolant = coolant;
    this.hydraulics = hydraulics;
    this.losses = new PressureLossReader(hydraulics, coolant);
    this.names = names;
    this.tanks = new ReservoirReader(hydraulics);
  }

  /** Returns the piece; empty, with a problem noted, if there is none of that name. */
  Optional<LoopElement> read(String name, Node item) {
    if (name.equals("core")) {
      return Optional.of(
          new Core(name, new ExchangerReader(root.section(name), day, coolant, losses).core()));
    }
    if (name.equals("pump")) {
      return Optional.of(new PumpReader(root.section("pump")).read());
    }
    Optional<String> kind = KeyTable.get().kindOf(name);
    if (kind.isEmpty()) {
      names.unknown(name, item);
      return Optional.empty();
    }
    In in = root.named(name, kind.get());
    return switch (kind.get()) {
      case "*reservoir" -> Optional.of(tanks.read(name, in));
      case "*hose" -> Optional.of(hose(name, in));
      case "*chiller" -> chiller(name, in, item);
      default -> heatExchanger(name, in, item);
    };
  }

  private Optional<LoopElement> heatExchanger(String name, In in, Node item) {
    return described(name, in, item, "the size of its face")
        ? Optional.of(new ExchangerReader(in, day, coolant, losses).heatExchanger(name))
        : Optional.empty();
  }

  private Optional<LoopElement> chiller(String name, In in, Node item) {
    return described(name, in, item, "its capacity")
        ? Optional.of(new ChillerReader(in, hydraulics, coolant).read(name))
        : Optional.empty();
  }

  /** Returns whether a piece that cannot go without a section has one; notes it if not. */
  private boolean described(String name, In in, Node item, String least) {
    if (!in.present() && !root.has(name)) {
      names.problem(
          item, "names `" + name + "`, so a section `" + name + ":` must say at least " + least);
    }
    return in.present();
  }

  private Hose hose(String name, In in) {
    Materials.HoseWall material =
        Materials.HoseWall.valueOf(in.choice("material").toUpperCase(Locale.ROOT));
    double length = in.number("length");
    double bore = in.number("bore");
    Hose.Inside inside =
        hydraulics.counts(in, "roughness", "fittings")
            ? new Hose.Inside(in.number("roughness"), in.number("fittings"))
            : Hose.Inside.SMOOTH;
    Hose hose =
        new Hose(
            name,
            length,
            bore,
            inside,
            material.thick(in.number("wall")),
            in.number("outside-coefficient"),
            cells(in, Math.PI / 4 * bore * bore * length),
            in.count("layers"));
    in.done();
    return hose;
  }

  /** Returns the cells asked for, or else the usual ones, fewer in a hose that holds little. */
  private static int cells(In in, double volume) {
    int cells = in.count("cells");
    return in.has("cells") ? cells : Math.max(1, Math.min(cells, (int) (volume / CELL_VOLUME)));
  }
}
