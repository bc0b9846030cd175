/** The one-line of a moment with its volts; fetched when the timeline is first used. */
import { useMemo, useState } from 'preact/hooks';
import { solveCircuit } from '../../engine/circuit/solveCircuit.ts';
import type { World } from '../../engine/world/types.ts';
import type { Bench } from '../bench/bench.ts';
import { groupsOf } from '../bench/benchWords.ts';
import { Diagram } from '../bench/Diagram.tsx';
import { layOut } from '../bench/layout.ts';

export const OneLine = ({ start, world }: { start: World; world: World }) => {
  const layout = useMemo(() => layOut(start), [start]);
  const groups = useMemo(() => groupsOf(start), [start]);
  const [chosen, setChosen] = useState<string | null>(null);
  const bench: Bench = useMemo(
    () => ({ start, world, solution: solveCircuit(world), operations: [], before: null }),
    [start, world],
  );
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a wide drawing is scrolled by keys
    <section class="replay-line" tabIndex={0} aria-label="One-line of this moment">
      <Diagram sheet={layout.wide} bench={bench} groups={groups} chosen={chosen} onEdge={setChosen} onBus={setChosen} />
    </section>
  );
};
