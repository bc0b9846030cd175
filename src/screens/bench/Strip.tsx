/** What is chosen in the diagram, its readings and what can be done to it; stays in sight at the foot of the page. */
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { pointWords } from '../../engine/acts/pointWords.ts';
import { componentKind } from '../../engine/catalogue/components.ts';
import { faultKind } from '../../engine/catalogue/faults.ts';
import { partById } from '../../engine/world/edit.ts';
import type { Part, PointId } from '../../engine/world/types.ts';
import { capital } from '../words.ts';
import { amperesIn, type Bench, electricalFaults, isBare, isClosed, readBus } from './bench.ts';
import { ampsOf, busName, edgeName, groupWords, liveWords, stateWords, touchOf, voltsOf } from './benchWords.ts';
import type { Bus, CircuitGraph, Edge } from './circuitGraph.ts';
import { faultWords } from './faultWords.ts';

export interface BenchActions {
  readonly put: (part: string, state: Part['state']) => void;
  readonly mend: (fault: string) => void;
  readonly clamp: (point: PointId) => void;
  readonly unclamp: () => void;
  readonly takeOff: (jumper: string) => void;
}

/** Buttons for every position of a part. */
export const Positions = ({ part, actions }: { part: Part; actions: BenchActions }) => (
  <>
    {Object.entries(componentKind(part.kind).states).map(([name, values]) => (
      <fieldset key={name} class="positions">
        <legend>{capital(name)}</legend>
        {values.map((value) => (
          <button
            key={value}
            type="button"
            aria-pressed={part.state[name] === value}
            onClick={() => actions.put(part.id, { [name]: value })}
          >
            {value}
            <span class="sr-only">
              : {name} of {part.name}
            </span>
          </button>
        ))}
      </fieldset>
    ))}
  </>
);

/** Faults of a part that the circuit feels, each with its repair. */
export const Faults = ({ part, actions }: { part: Part; actions: BenchActions }) => (
  <>
    {electricalFaults(part).map((fault) => (
      <p key={fault.id} class="fault-line">
        {capital(faultKind(fault.kind).name)}{' '}
        <button type="button" onClick={() => actions.mend(fault.id)}>
          Mend it<span class="sr-only">: {faultKind(fault.kind).name}</span>
        </button>
      </p>
    ))}
  </>
);

const BusStrip = ({
  bench,
  bus,
  first,
  actions,
}: {
  bench: Bench;
  bus: Bus;
  first: PointId | null;
  actions: BenchActions;
}) => {
  const { worst, legs } = readBus(bench, bus);
  const bare = bus.points.filter((point) => isBare(bench.world, point));
  const [picked, setPicked] = useState<PointId | null>(null);
  const point = picked !== null && bare.includes(picked) ? picked : (bare[0] ?? null);
  const on = bench.world.jumpers.flatMap((jumper, at) =>
    jumper.points.some((each) => bus.points.includes(each)) ? [{ jumper, at }] : [],
  );
  return (
    <>
      <div>
        <h2>{busName(bench.world, bus)}</h2>
        <p class="reading">
          {legs.length > 1 ? `Legs ${legs.map((leg) => voltsOf(leg.volts)).join(' and ')}` : voltsOf(worst.volts)} to
          the ground beside it: <strong>{liveWords(worst)}</strong>
          {worst.live
            ? `, held by ${worst.sources.map((group) => groupWords(bench.world, group)).join(' and by ')}`
            : ''}
          . A touch, hand to feet through 1 kΩ, draws {ampsOf(worst.throughKilohm)}:{' '}
          <strong>{touchOf(worst).words}</strong>. {faultWords(bench.world, worst.point)}
        </p>
      </div>
      <div class="buttons">
        {point === null ? (
          <p class="hint">No bare metal here to clamp on.</p>
        ) : (
          <>
            {bare.length > 1 && (
              <select
                aria-label="Point to clamp on"
                value={point}
                onChange={(event) => setPicked(event.currentTarget.value)}
              >
                {bare.map((each) => (
                  <option key={each} value={each}>
                    {capital(pointWords(bench.world, each))}
                  </option>
                ))}
              </select>
            )}
            <button type="button" class={first === null ? undefined : 'primary'} onClick={() => actions.clamp(point)}>
              {first === null ? 'Begin a ground or short here' : 'Second clamp here'}
            </button>
          </>
        )}
        {on.map(({ jumper, at }) => (
          <button key={jumper.id} type="button" onClick={() => actions.takeOff(jumper.id)}>
            Take ground {at + 1} off
          </button>
        ))}
      </div>
    </>
  );
};

const EdgeStrip = ({ bench, edge, actions }: { bench: Bench; edge: Edge; actions: BenchActions }) => {
  const part = partById(bench.world, edge.part);
  const closed = isClosed(bench.world, edge);
  const state = stateWords(bench.world, edge, closed);
  return (
    <>
      <div>
        <h2>{edgeName(bench.world, edge)}</h2>
        <p class="reading">
          {state === '' ? '' : `${capital(state)}. `}
          {closed || edge.symbol !== 'leak'
            ? `${ampsOf(amperesIn(bench, edge))} through it.`
            : 'Nothing leaks here now.'}
        </p>
      </div>
      <div class="buttons">
        <Positions part={part} actions={actions} />
        <Faults part={part} actions={actions} />
      </div>
    </>
  );
};

export interface StripProps {
  readonly bench: Bench;
  readonly graph: CircuitGraph;
  readonly chosen: string | null;
  /** First clamp of a ground that is being put on. */
  readonly first: PointId | null;
  readonly said: ComponentChildren;
  /** Buttons for the whole bench. */
  readonly tools: ComponentChildren;
  readonly actions: BenchActions;
}

export const Strip = ({ bench, graph, chosen, first, said, tools, actions }: StripProps) => {
  const bus = graph.buses.find(({ id }) => id === chosen);
  const edge = graph.edges.find(({ id }) => id === chosen);
  return (
    <section class="bench-strip paper" aria-label="What is chosen">
      {first !== null && (
        <p class="notice">
          One clamp is on {pointWords(bench.world, first)}. Choose where the other goes.{' '}
          <button type="button" onClick={actions.unclamp}>
            Never mind
          </button>
        </p>
      )}
      <div class="chosen-thing">
        {bus && <BusStrip bench={bench} bus={bus} first={first} actions={actions} />}
        {edge && <EdgeStrip bench={bench} edge={edge} actions={actions} />}
        {!bus && !edge && (
          <p class="hint">
            Choose a device to open or close it, a bar to read it or to put a ground on. Arrows move in the diagram.
          </p>
        )}
      </div>
      <div class="strip-foot">
        <div role="status" class="said">
          {said}
        </div>
        <div class="buttons">{tools}</div>
      </div>
    </section>
  );
};
