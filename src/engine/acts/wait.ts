/** Standing by while the clock runs: for the second worker, the dispatcher, the light. */
import { type ActKind, event, outcome } from './kind.ts';

const longest = 60;

export const wait: ActKind<'wait'> = {
  minutes: (_world, act) => act.minutes,
  refuse: (_world, act) =>
    Number.isInteger(act.minutes) && act.minutes >= 1 && act.minutes <= longest
      ? null
      : `one waits 1 to ${longest} whole minutes at a time`,
  apply: (world, act) =>
    outcome(world, [
      event('done', null, `${act.minutes} ${act.minutes === 1 ? 'minute has' : 'minutes have'} passed.`),
    ]),
  offers: () =>
    [1, 5, 15].map((minutes) => ({
      act: { act: 'wait', minutes },
      label: minutes === 1 ? 'Wait 1 minute' : `Wait ${minutes} minutes`,
      by: 'feet',
      about: null,
    })),
};
