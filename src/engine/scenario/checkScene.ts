/** What only whole sections show: poles on one spot, changes of weather in one minute. */
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

/** Refusals of a scenario that each section for itself would let pass. */
export const checkScene = (scenario: WrittenScenario, poleAt: (id: string) => Path): Refusal[] => [
  ...checkSpots(scenario.poles, poleAt),
  ...checkWeather(scenario.site),
];
