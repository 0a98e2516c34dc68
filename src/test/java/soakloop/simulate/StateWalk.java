package soakloop.simulate;

import java.util.Arrays;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;
import soakloop.session.Phase;

/**
 * Integrates a session on the bare model and shows every state on the way, which a trace does not
 * hold. Thermostats do not switch here.
 */
final class StateWalk {
  private static final double ABSOLUTE = 1e-5;
  private static final double RELATIVE = 1e-8;

  /** What looks on. */
  interface Visitor {
    /**
     * Shows a state.
     *
     * @param model the model
     * @param y the state; temperatures up to the ledger's first place
     * @param m what the model found there
     */
    void see(LoopModel model, double[] y, Moment m);
  }

  private StateWalk() {}

  static void walk(Setup setup, Visitor visitor) throws SimulationException {
    LoopModel model = new LoopModel(setup.rig(), setup.day(), setup.start().engineCoolant());
    double[] y = InitialState.of(model, setup);
    double[] scratch = new double[y.length];
    double time = 0;
    for (Phase phase : setup.session().phases()) {
      model.startPhase(phase, time, y);
      visitor.see(model, y, model.evaluate(time, y, scratch));
      DormandPrince54Integrator integrator = integrator(model);
      integrator.addStepHandler(
          interpolator -> {
            double t = interpolator.getCurrentState().getTime();
            double[] state = interpolator.getCurrentState().getPrimaryState();
            visitor.see(model, state, model.evaluate(t, state, scratch));
          });
      double end = time + phase.duration();
      y = integrator.integrate(model, new ODEState(time, y), end).getPrimaryState();
      time = end;
    }
  }

  private static DormandPrince54Integrator integrator(LoopModel model) {
    int size = model.getDimension();
    double[] absolute = new double[size];
    double[] relative = new double[size];
    int temperatures = model.ledger().first();
    Arrays.fill(absolute, ABSOLUTE);
    Arrays.fill(relative, RELATIVE);
    Arrays.fill(absolute, temperatures, size, Ledger.IGNORED);
    Arrays.fill(relative, temperatures, size, 0);
    DormandPrince54Integrator integrator =
        new DormandPrince54Integrator(1e-9, 1, absolute, relative);
    integrator.setInitialStepSize(1e-3);
    return integrator;
  }
}
