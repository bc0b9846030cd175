/** The diagram as lists: every device with its positions, every ground, every point with its reading. */
import { useState } from 'preact/hooks';
import { pointWords } from '../../engine/acts/pointWords.ts';
import type { PointState } from '../../engine/circuit/types.ts';
import type { Part, PointId, World } from '../../engine/world/types.ts';
import { capital } from '../words.ts';
import { amperesOn, type Bench, devicesOn, refusal } from './bench.ts';
import { ampsOf, groupWords, liveWords, partName, touchOf, voltsOf } from './benchWords.ts';
import { boltedFault } from './faultWords.ts';
import { groupBy } from './groupBy.ts';
import { type BenchActions, Faults, Positions } from './Strip.tsx';

const placeOf = (part: Part | undefined): string => part?.name.slice(part.name.lastIndexOf(', ') + 2) ?? '';

export const Devices = ({ bench, actions }: { bench: Bench; actions: BenchActions }) => (
  <ul class="devices">
    {devicesOn(bench.world, bench.start).map((part) => (
      <li key={part.id} data-device={part.id}>
        <h3>{capital(partName(bench.world, part))}</h3>
        <div class="buttons">
          <Positions part={part} actions={actions} />
          <Faults part={part} actions={actions} />
        </div>
      </li>
    ))}
  </ul>
);

const PointChoice = ({
  label,
  world,
  points,
  value,
  onPick,
}: {
  label: string;
  world: World;
  points: readonly PointState[];
  value: PointId;
  onPick: (point: PointId) => void;
}) => (
  <label>
    {label}
    <select value={value} onChange={(event) => onPick(event.currentTarget.value)}>
      {[...groupBy(points, ({ point }) => placeOf(world.parts.find(({ id }) => point.startsWith(`${id}/`))))].map(
        ([place, own]) => (
          <optgroup key={place} label={capital(place)}>
            {own.map(({ point }) => (
              <option key={point} value={point}>
                {capital(pointWords(world, point))}
              </option>
            ))}
          </optgroup>
        ),
      )}
    </select>
  </label>
);

export interface GroundsProps {
  readonly bench: Bench;
  readonly actions: BenchActions;
  readonly join: (points: readonly PointId[]) => void;
}

export const Grounds = ({ bench, actions, join }: GroundsProps) => {
  const { points } = bench.solution;
  const [ends, setEnds] = useState<readonly [PointId, PointId] | null>(null);
  const [a, b] = ends ?? [points[0]?.point ?? '', points[1]?.point ?? ''];
  const no = refusal(bench, [a, b]);
  return (
    <>
      {bench.world.jumpers.length === 0 ? (
        <p>None is on. Choose two points and put one on.</p>
      ) : (
        <ol class="grounds">
          {bench.world.jumpers.map((jumper) => (
            <li key={jumper.id}>
              {jumper.points.map((point) => pointWords(bench.world, point)).join(' to ')}:{' '}
              {ampsOf(amperesOn(bench, jumper))}{' '}
              <button type="button" onClick={() => actions.takeOff(jumper.id)}>
                Take it off
              </button>
            </li>
          ))}
        </ol>
      )}
      <div class="join">
        <PointChoice
          label="From"
          world={bench.world}
          points={points}
          value={a}
          onPick={(point) => setEnds([point, b])}
        />
        <PointChoice label="To" world={bench.world} points={points} value={b} onPick={(point) => setEnds([a, point])} />
        <button type="button" disabled={no !== null} onClick={() => join([a, b])}>
          Put it on
        </button>
      </div>
      {no !== null && <p class="hint">{no}</p>}
    </>
  );
};

const faultCell = (amperes: number | null): string => (amperes === null ? 'the neutral itself' : ampsOf(amperes));

export const Points = ({ bench }: { bench: Bench }) => {
  const { world, solution } = bench;
  const places = groupBy(solution.points, ({ point }) =>
    placeOf(world.parts.find(({ id }) => point.startsWith(`${id}/`))),
  );
  return (
    <div class="points">
      <table>
        <thead>
          <tr>
            <th scope="col">Point</th>
            <th scope="col">To the ground</th>
            <th scope="col">Live</th>
            <th scope="col">A touch draws</th>
            <th scope="col">What that does</th>
            <th scope="col">A bolted fault drives</th>
          </tr>
        </thead>
        {[...places].map(([place, own]) => (
          <tbody key={place}>
            <tr>
              <th scope="rowgroup" colSpan={6}>
                {capital(place)}
              </th>
            </tr>
            {own.map((state) => (
              <tr key={state.point} data-point={state.point} class={state.live ? 'live' : undefined}>
                <th scope="row">{capital(pointWords(world, state.point)).replace(`, ${place}`, '')}</th>
                <td>{voltsOf(state.volts)}</td>
                <td>
                  {state.live
                    ? `live: ${state.sources.map((group) => groupWords(world, group)).join(' and ')}`
                    : liveWords(state)}
                </td>
                <td>{ampsOf(state.throughKilohm)}</td>
                <td>{touchOf(state).words}</td>
                <td data-head="A bolted fault drives ">{faultCell(boltedFault(world, state.point))}</td>
              </tr>
            ))}
          </tbody>
        ))}
      </table>
    </div>
  );
};
