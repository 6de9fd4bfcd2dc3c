package dev.kettlemark.labelling;

import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.TakeLine;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** How much of what each stage leaves gets into what the last stage leaves. */
final class StageReach {

  private record Taken(int from, int to, double share) {}

  private StageReach() {}

  /** One share for each stage; takes hand out no more than there is, as in the kitchen. */
  static double[] of(Formula formula) {
    List<Stage> stages = formula.stages();
    double[] untaken = new double[stages.size()];
    Arrays.fill(untaken, 1);
    Map<String, Integer> latest = new HashMap<>();
    List<Taken> taken = new ArrayList<>();
    for (int to = 0; to < stages.size(); to++) {
      for (TakeLine take : stages.get(to).takes()) {
        Integer from = latest.get(take.stage().value());
        if (from != null) {
          double share = Math.min(untaken[from], take.share().doubleValue());
          untaken[from] -= share;
          taken.add(new Taken(from, to, share));
        }
      }
      latest.put(stages.get(to).name().value(), to);
    }
    double[] reach = new double[stages.size()];
    if (reach.length > 0) {
      reach[reach.length - 1] = 1;
    }
    for (int i = taken.size() - 1; i >= 0; i--) {
      Taken one = taken.get(i);
      reach[one.from()] += one.share() * reach[one.to()];
    }
    return reach;
  }
}
