/**
 * The one-line bench: the circuit of a scenario on a sheet, every device to be opened and closed by hand, every point to be
 * read. Nothing here is a drill: nobody can be hurt, nothing is logged, and faults stand open.
 */
import { useMemo, useState } from 'preact/hooks';
import { pointWords } from '../../engine/acts/pointWords.ts';
import { CircuitDefect } from '../../engine/circuit/circuitDefect.ts';
import { build } from '../../engine/world/build.ts';
import { faultsOf, partById } from '../../engine/world/edit.ts';
import type { PointId } from '../../engine/world/types.ts';
import { Caution } from '../parts/Caution.tsx';
import type { Offered } from '../types.ts';
import { capital } from '../words.ts';
import { type Bench, clampOff, clampOn, drawnOf, isClosed, mend, openBench, otherWay, put, refusal } from './bench.ts';
import {
  edgeName,
  groupMark,
  groupsOf,
  groupWords,
  liveRule,
  operationsOf,
  partName,
  stateWords,
} from './benchWords.ts';
import { Diagram } from './Diagram.tsx';
import { Devices, Grounds, Points } from './Lists.tsx';
import { layOut, type Sheet } from './layout.ts';
import { type BenchActions, Strip } from './Strip.tsx';
import { SymbolKey } from './SymbolKey.tsx';
import { whyOf } from './why.ts';

export interface BenchPageProps {
  /** Scenarios that can be opened, in the order of the list. */
  readonly scenarios: readonly Offered[];
  /** Leaves the page. */
  readonly back: () => void;
}

/** A wider drawing than this is cut into one sheet a pole or premises on every screen. */
const WIDEST = 1750;

/** Where the bars of a sheet go on. */
const goesOn = (sheet: Sheet): string => [...new Set(sheet.buses.flatMap(({ onTo }) => onTo))].join(', ');

const Running = ({ bench, groups }: { bench: Bench; groups: readonly string[] }) => {
  const { network } = bench.solution;
  const running = network.groups.filter((group) => groups.includes(group));
  return (
    <>
      <dl class="sources" aria-label="Sources">
        {groups.map((group) => (
          <div key={group}>
            <dt>{groupMark(groups, group)}</dt>
            <dd>{groupWords(bench.world, group)}</dd>
          </div>
        ))}
      </dl>
      {running.length > 1 && (
        <p class="hint">
          These sources are not in step: every reading is at the worst angle that can come up between them.
        </p>
      )}
    </>
  );
};

const Reasons = ({ bench }: { bench: Bench }) => {
  const reasons = useMemo(() => whyOf(bench), [bench]);
  if (reasons.length === 0) return <p>No transformer hangs in this scene.</p>;
  return (
    <>
      {reasons.map(({ part, name, now, short }) => (
        <div key={part} class="why">
          <h3>{capital(name)}</h3>
          <p>{now}</p>
          {short !== null && <p>{short}</p>}
        </div>
      ))}
    </>
  );
};

const Opened = ({ offered }: { offered: Offered }) => {
  const start = useMemo(() => build(offered.scenario, offered.hash), [offered]);
  const groups = useMemo(() => groupsOf(start), [start]);
  const [bench, setBench] = useState<Bench>(() => openBench(start));
  const mended = faultsOf(bench.world).length;
  const layout = useMemo(() => layOut(drawnOf(bench)), [start, mended]);
  const [chosen, setChosen] = useState<string | null>(null);
  const [first, setFirst] = useState<PointId | null>(null);
  const [said, setSaid] = useState('');
  const shows = (next: Bench, words: string): void => {
    setBench(next);
    setSaid(words);
  };
  /** A change; a circuit that cannot be solved or does not come to rest is told, and nothing is changed. */
  const change = (make: () => Bench, words: (next: Bench) => string): void => {
    try {
      const next = make();
      shows(next, words(next));
    } catch (error) {
      if (!(error instanceof CircuitDefect)) throw error;
      setSaid(`That cannot be worked out (${error.message}); nothing was changed.`);
    }
  };
  const { graph } = layout;
  const join = (points: readonly PointId[]): void => {
    const no = refusal(bench, points);
    if (no !== null) {
      setSaid(no);
      return;
    }
    setFirst(null);
    const ends = points.map((point) => pointWords(bench.world, point)).join(' to ');
    change(
      () => clampOn(bench, points),
      () => `A ground is on, ${ends}.`,
    );
  };
  const actions: BenchActions = {
    put: (part, state) =>
      change(
        () => put(bench, part, state),
        () => `${capital(partName(bench.world, partById(bench.world, part)))}: ${Object.values(state).join(', ')}.`,
      ),
    mend: (fault) =>
      change(
        () => mend(bench, fault),
        () => 'Mended.',
      ),
    clamp: (point) => (first === null ? setFirst(point) : join([first, point])),
    unclamp: () => setFirst(null),
    takeOff: (jumper) =>
      change(
        () => clampOff(bench, jumper),
        () => 'The ground is off.',
      ),
  };
  const onEdge = (id: string): void => {
    setChosen(id);
    const edge = graph.edges.find((each) => each.id === id);
    const state = edge && otherWay(bench.world, edge);
    if (!edge || !state) return;
    change(
      () => put(bench, edge.part, state),
      // What protection left of it is told with the operations.
      ({ world }) => `${edgeName(world, edge)}: ${stateWords(world, edge, isClosed(world, edge))}.`,
    );
  };
  const drawing = { bench, groups, chosen, onEdge, onBus: setChosen };
  const operations = operationsOf(bench);
  const whole = layout.wide.width <= WIDEST;
  return (
    <>
      {whole && (
        <div class="diagram-wide">
          <Diagram sheet={layout.wide} {...drawing} />
        </div>
      )}
      <div class={whole ? 'diagram-narrow' : 'diagram-narrow always'}>
        {layout.narrow.map((sheet) => (
          <figure key={sheet.id}>
            <Diagram sheet={sheet} {...drawing} />
            {goesOn(sheet) !== '' && <figcaption class="hint">▸ goes on: {goesOn(sheet)}</figcaption>}
          </figure>
        ))}
      </div>
      <Running bench={bench} groups={groups} />
      <Strip
        bench={bench}
        graph={graph}
        chosen={chosen}
        first={first}
        actions={actions}
        tools={
          <>
            <button
              type="button"
              disabled={bench.before === null}
              onClick={() => bench.before && shows(bench.before, 'One step back.')}
            >
              One step back
            </button>
            <button type="button" onClick={() => shows(openBench(start), 'As the scenario has it.')}>
              As the scenario has it
            </button>
            <button type="button" onClick={() => print()}>
              Print
            </button>
          </>
        }
        said={
          <>
            {said !== '' && <p>{said}</p>}
            {operations.map((words, at) => (
              <p key={`${at} ${words}`} class="operated">
                <span class="stamp">Operated</span> {words}
              </p>
            ))}
          </>
        }
      />
      <div class="not-printed">
        <SymbolKey used={new Set(graph.edges.map(({ symbol }) => symbol))} />
      </div>
      <section aria-labelledby="bench-why">
        <h2 id="bench-why">Why these volts</h2>
        <Reasons bench={bench} />
        <p class="hint">{liveRule}</p>
      </section>
      <section aria-labelledby="bench-grounds" class="not-printed">
        <h2 id="bench-grounds">Grounds and shorts</h2>
        <Grounds bench={bench} actions={actions} join={join} />
      </section>
      <section aria-labelledby="bench-devices" class="not-printed">
        <h2 id="bench-devices">Devices</h2>
        <Devices bench={bench} actions={actions} />
      </section>
      <section aria-labelledby="bench-points" class="not-printed">
        <h2 id="bench-points">Points</h2>
        <Points bench={bench} />
      </section>
    </>
  );
};

/** The page; whoever wires it hands in the library and the way back. */
export const BenchPage = ({ scenarios, back }: BenchPageProps) => {
  const [id, setId] = useState(scenarios[0]?.scenario.id ?? '');
  const offered = scenarios.find(({ scenario }) => scenario.id === id);
  return (
    <main class="desk bench-desk">
      <div class="sheet paper bench">
        <header class="letterhead bench-head">
          <h1>One-line bench</h1>
          <div class="bench-choice">
            <label>
              <span>Scenario</span>
              <select value={id} onChange={(event) => setId(event.currentTarget.value)}>
                {scenarios.map(({ scenario }) => (
                  <option key={scenario.id} value={scenario.id}>
                    {scenario.title}
                  </option>
                ))}
              </select>
            </label>
            <button type="button" onClick={back}>
              Back to the start
            </button>
          </div>
          {offered && <p class="print-only">{offered.scenario.title}, as the devices stand in the drawing.</p>}
          <p class="not-printed">
            Open, close, ground, start, stop, and read what the circuit then does. The bench hides no fault: take the
            drill first.
          </p>
        </header>
        {offered ? (
          <Opened key={id} offered={offered} />
        ) : (
          <p>No scenario can be read. Write one, or load the page again.</p>
        )}
        <Caution />
      </div>
    </main>
  );
};
