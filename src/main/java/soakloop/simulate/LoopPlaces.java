package soakloop.simulate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import soakloop.fluid.Coolant;
import soakloop.fluid.MoistAir;
import soakloop.rig.Airflow;
import soakloop.rig.Branches;
import soakloop.rig.Chiller;
import soakloop.rig.Core;
import soakloop.rig.Day;
import soakloop.rig.Exchanger;
import soakloop.rig.HeatExchanger;
import soakloop.rig.Hose;
import soakloop.rig.LoopElement;
import soakloop.rig.Pump;
import soakloop.rig.Reservoir;
import soakloop.rig.Rig;

/**
 * A rig's loop compiled into cells: as the coolant passes them, and every piece by itself with what
 * comes before it.
 */
final class LoopPlaces {
  /** Coolant fills the loop at this temperature; its mass then stays, K. */
  private static final double FILL = 293.15;

  /** A piece, its cells and those whose coolant enters it. */
  private record Place(LoopElement piece, LoopCells cells, LoopCells before) {}

  private final Day day;
  private final Coolant coolant;
  private final EnthalpyScale scale;
  private final StateLayout layout;
  private final LoopFlow flow;
  private final Airflow airflow;
  private final double density;
  private final double mass;
  private final double airDensity;
  private final List<LoopCells> around;
  private final List<Place> places = new ArrayList<>();
  private final List<HeatExchangerCells> inAirOrder;

  LoopPlaces(Rig rig, Day day, EnthalpyScale scale, StateLayout layout, LoopFlow flow) {
    this.day = day;
    this.coolant = rig.coolant();
    this.scale = scale;
    this.layout = layout;
    this.flow = flow;
    this.airflow = rig.airflow();
    this.density = coolant.density(FILL);
    this.mass = density * rig.loop().coolantVolume();
    this.airDensity =
        MoistAir.of(day.temperature(), day.pressure(), day.humidity())
            .density(day.temperature(), day.pressure());
    List<LoopElement> elements = rig.loop().elements();
    this.around = compile(elements);
    place(elements, around, around.get(around.size() - 1));
    this.inAirOrder = stack();
  }

  private List<LoopCells> compile(List<LoopElement> elements) {
    List<LoopCells> cells = new ArrayList<>();
    for (LoopElement element : elements) {
      cells.add(compile(element));
    }
    return List.copyOf(cells);
  }

  private LoopCells compile(LoopElement element) {
    double filled = density * element.coolantVolume();
    if (element instanceof Reservoir r) {
      return tank(r, filled);
    }
    if (element instanceof Pump) {
      return MixedCell.pump(scale, layout, filled);
    }
    if (element instanceof Chiller c) {
      return new ChillerCell(c, filled, scale, layout);
    }
    if (element instanceof Hose h) {
      return new HoseCells(h, coolant, scale, layout, density);
    }
    if (element instanceof Core c) {
      return new CoreCells(
          cells(c.exchanger(), Optional.of(new CondensingAir(day))),
          coolant,
          new CoreLoss(c.exchanger().conductance().geometry()));
    }
    if (element instanceof Branches b) {
      return new BranchCells(flow, flow.stretch(b), b.ways().stream().map(this::compile).toList());
    }
    HeatExchanger x = (HeatExchanger) element;
    return new HeatExchangerCells(
        cells(x.exchanger(), Optional.empty()),
        coolant,
        new HeatExchangerCells.Surroundings(
            x.faceArea(), airDensity, airflow.inletRise(), airflow.recirculation()));
  }

  private ExchangerCells cells(Exchanger exchanger, Optional<CondensingAir> vapour) {
    return new ExchangerCells(exchanger, coolant, scale, layout, density, vapour);
  }

  private LoopCells tank(Reservoir tank, double filled) {
    return tank.ice().isEmpty() && tank.layers().count() == 1
        ? MixedCell.reservoir(scale, layout, filled, tank.surroundings())
        : new TankCells(tank, filled, scale, layout, new ThinnedCoolant(coolant, mass));
  }

  private void place(List<LoopElement> elements, List<LoopCells> cells, LoopCells entering) {
    LoopCells before = entering;
    for (int i = 0; i < elements.size(); i++) {
      if (elements.get(i) instanceof Branches b) {
        BranchCells ways = (BranchCells) cells.get(i);
        for (int w = 0; w < b.ways().size(); w++) {
          place(b.ways().get(w), ways.way(w), before);
        }
      } else {
        places.add(new Place(elements.get(i), cells.get(i), before));
      }
      before = cells.get(i);
    }
  }

  /** Stands heat exchangers behind one another; returns them as the air meets them. */
  private List<HeatExchangerCells> stack() {
    Map<String, Place> waiting = new HashMap<>();
    Set<String> done = new HashSet<>();
    List<HeatExchangerCells> ordered = new ArrayList<>();
    List<Place> left = new ArrayList<>();
    for (Place place : places) {
      if (place.piece() instanceof HeatExchanger x) {
        waiting.put(x.name(), place);
        left.add(place);
      }
    }
    while (!left.isEmpty()) {
      int before = left.size();
      for (Place place : List.copyOf(left)) {
        HeatExchanger x = (HeatExchanger) place.piece();
        if (x.behind().isEmpty() || done.contains(x.behind().get())) {
          HeatExchangerCells cells = (HeatExchangerCells) place.cells();
          x.behind()
              .map(waiting::get)
              .ifPresent(front -> cells.standBehind((HeatExchangerCells) front.cells()));
          ordered.add(cells);
          done.add(x.name());
          left.remove(place);
        }
      }
      if (left.size() == before) {
        throw new IllegalArgumentException(
            "`" + left.get(0).piece().name() + "` stands behind what is not in front of it");
      }
    }
    return List.copyOf(ordered);
  }

  /** Returns the loop's cells as the coolant passes them, ways in parallel as one. */
  List<LoopCells> around() {
    return around;
  }

  /** Returns the heat exchangers, each after the one whose air it gets. */
  List<HeatExchangerCells> inAirOrder() {
    return inAirOrder;
  }

  /** Returns the place of the first piece of a kind; -1 if there is none. */
  int first(Class<? extends LoopElement> kind) {
    for (int i = 0; i < places.size(); i++) {
      if (kind.isInstance(places.get(i).piece())) {
        return i;
      }
    }
    return -1;
  }

  /** Returns the tank that ice goes into. */
  Optional<TankCells> iced() {
    return places.stream()
        .map(Place::cells)
        .filter(TankCells.class::isInstance)
        .map(TankCells.class::cast)
        .filter(tank -> tank.ice().isPresent())
        .findFirst();
  }

  /** Returns the cells of a piece. */
  LoopCells cells(int place) {
    return places.get(place).cells();
  }

  /** Returns the cells whose coolant enters a piece. */
  LoopCells before(int place) {
    return places.get(place).before();
  }
}
