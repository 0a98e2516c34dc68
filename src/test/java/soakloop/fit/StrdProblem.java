package soakloop.fit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.SingularValueDecomposition;

/**
 * A regression problem with certified answers (validation/nist-strd).
 *
 * @param name NIST's
 * @param level of difficulty, NIST's
 * @param parameters with their starts and certified values
 * @param rest certified residual sum of squares
 * @param observations y, then x
 */
public record StrdProblem(
    String name,
    String level,
    List<Parameter> parameters,
    double rest,
    List<double[]> observations) {
  private static final LeastSquares.Patience STRICT = new LeastSquares.Patience(1e-15, 1e-15, 3000);

  /** One parameter. */
  public record Parameter(double start1, double start2, double certified, double deviation) {}

  /** What was found. */
  @SuppressWarnings("ArrayRecordComponent") // read once and only looked at
  public record Answer(double[] parameters, double[] deviations, double rest) {}

  /** Copies the lists. */
  public StrdProblem {
    parameters = List.copyOf(parameters);
    observations = List.copyOf(observations);
  }

  /** Reads all problems. */
  public static List<StrdProblem> all() {
    try {
      List<StrdProblem> problems = new ArrayList<>();
      List<String> block = new ArrayList<>();
      for (String line : Files.readAllLines(Path.of("validation/nist-strd/problems.txt"))) {
        if (line.startsWith("problem") && !block.isEmpty()) {
          problems.add(of(block));
          block.clear();
        }
        if (!line.startsWith("#")) {
          block.add(line);
        }
      }
      problems.add(of(block));
      return problems;
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static StrdProblem of(List<String> lines) {
    String[] head = lines.get(0).split(" ");
    List<Parameter> parameters = new ArrayList<>();
    List<double[]> observations = new ArrayList<>();
    double rest = 0;
    for (String line : lines.subList(1, lines.size())) {
      String[] cells = line.split(" ");
      if (cells[0].equals("b")) {
        parameters.add(
            new Parameter(number(cells[1]), number(cells[2]), number(cells[3]), number(cells[4])));
      } else if (cells[0].equals("rest")) {
        rest = number(cells[1]);
      } else {
        observations.add(new double[] {number(cells[0]), number(cells[1])});
      }
    }
    return new StrdProblem(head[1], head[2], parameters, rest, observations);
  }

  private static double number(String text) {
    return Double.parseDouble(text);
  }

  private Gradient model(Gradient[] b, double x) {
    return switch (name) {
      case "Misra1a" -> b[0].multiply(b[1].multiply(-x).exp().negate().add(1));
      case "Misra1b" -> b[0].multiply(b[1].multiply(x / 2).add(1).pow(-2).negate().add(1));
      case "Misra1d" -> b[0].multiply(b[1]).multiply(x).divide(b[1].multiply(x).add(1));
      case "Rat42" -> b[0].divide(b[1].subtract(b[2].multiply(x)).exp().add(1));
      case "MGH09" ->
          b[0].multiply(b[1].multiply(x).add(x * x)).divide(b[2].multiply(x).add(x * x).add(b[3]));
      case "MGH10" -> b[0].multiply(b[1].divide(b[2].add(x)).exp());
      case "Thurber" ->
          b[0].add(b[1].multiply(x))
              .add(b[2].multiply(x * x))
              .add(b[3].multiply(x * x * x))
              .divide(
                  b[4].multiply(x).add(1).add(b[5].multiply(x * x)).add(b[6].multiply(x * x * x)));
      case "Eckerle4" -> {
        Gradient away = b[2].negate().add(x).divide(b[1]);
        yield b[0].divide(b[1]).multiply(away.multiply(away).multiply(-0.5).exp());
      }
      default -> throw new IllegalArgumentException(name);
    };
  }

  /**
   * Solves it as a fit would.
   *
   * @param start 1 or 2
   */
  public Answer from(int start) {
    double[] from =
        parameters.stream().mapToDouble(p -> start == 1 ? p.start1() : p.start2()).toArray();
    Left left = new Left();
    LeastSquares.Solution found = LeastSquares.search(left, from, STRICT);
    int free = observations.size() - from.length;
    double variance = found.cost() / free;
    RealMatrix slopes = MatrixUtils.createRealMatrix(left.slopes(found.point().toArray()));
    double[] size = new double[from.length];
    for (int k = 0; k < from.length; k++) {
      size[k] = slopes.getColumnVector(k).getNorm();
      slopes.setColumnVector(k, slopes.getColumnVector(k).mapDivide(size[k]));
    }
    RealMatrix shape = new SingularValueDecomposition(slopes).getCovariance(0);
    double[] deviations = new double[from.length];
    for (int k = 0; k < from.length; k++) {
      deviations[k] = Math.sqrt(variance * shape.getEntry(k, k)) / size[k];
    }
    return new Answer(found.point().toArray(), deviations, found.cost());
  }

  /** Residuals with slopes by automatic differentiation. */
  private final class Left implements LeastSquares.Residuals {
    @Override
    public double[] at(double[] point) {
      double[] left = new double[observations.size()];
      for (int i = 0; i < left.length; i++) {
        left[i] = row(point, i).getValue();
      }
      return left;
    }

    @Override
    public double[][] slopes(double[] point) {
      RealMatrix slopes = new Array2DRowRealMatrix(observations.size(), point.length);
      for (int i = 0; i < observations.size(); i++) {
        slopes.setRow(i, row(point, i).getGradient());
      }
      return slopes.getData();
    }

    private Gradient row(double[] point, int i) {
      Gradient[] b = new Gradient[point.length];
      for (int k = 0; k < b.length; k++) {
        b[k] = Gradient.variable(b.length, k, point[k]);
      }
      double[] observation = observations.get(i);
      return model(b, observation[1]).subtract(observation[0]);
    }
  }
}
