/** What only whole sections show: poles on one spot, changes of weather in one minute, more wires than a span can couple. */
import { mostCoupled } from '../catalogue/components/coupledLine.ts';
import { lettersOf } from '../catalogue/phaseNets.ts';
import type { Path, Refusal } from './problem.ts';
import type { WrittenScenario } from './schema/scenario.ts';

const closest = 1;

const checkSpots = (poles: WrittenScenario['poles'], pathOf: (id: string) => Path): Refusal[] =>
  poles.flatMap(({ id, x, y }, at) => {
    const near = poles.slice(0, at).find((other) => Math.abs(other.x - x) < closest && Math.abs(other.y - y) < closest);
    if (near === undefined) return [];
    return [{ path: [...pathOf(id), 'x'], found: `the spot of ${near.id}`, expected: 'a metre or more between poles' }];
  });

const checkWeather = ({ weather }: WrittenScenario['site']): Refusal[] =>
  weather.flatMap(({ atMinute }, at) =>
    weather[at - 1]?.atMinute === atMinute
      ? [{ path: ['site', 'weather'], found: `two changes after ${atMinute} min`, expected: 'one change a minute' }]
      : [],
  );

/** Refusals of wires between two poles, phases of all spans and the neutral: with them no parts can be made. */
export const checkWires = ({ spans, supply }: WrittenScenario, spanAt: (id: string) => Path): Refusal[] => {
  const wires = new Map<string, number>();
  return spans.flatMap(({ id, from, to, phases }) => {
    const pair = [from, to]
      .map((net) => net.slice(0, net.indexOf('.')))
      .sort()
      .join(' ');
    const count = (wires.get(pair) ?? (supply.delta ? 0 : 1)) + lettersOf(phases).length;
    wires.set(pair, count);
    if (count <= mostCoupled) return [];
    return [{ path: spanAt(id), found: `${count} wires between two poles`, expected: `at most ${mostCoupled}` }];
  });
};

/** Refusals of a scenario that each section for itself would let pass. */
export const checkScene = (scenario: WrittenScenario, poleAt: (id: string) => Path): Refusal[] => [
  ...checkSpots(scenario.poles, poleAt),
  ...checkWeather(scenario.site),
];
