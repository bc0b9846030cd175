/** Calling that everybody is clear of the line, before a clearance is given back. */
import { type ActKind, event, outcome } from './kind.ts';
import { onFoot, standHere } from './presence.ts';

/** Name of the test under which the call is kept in knowledge. */
export const everyoneClearTest = 'everyone-clear';

export const everyoneClear: ActKind<'everyone-clear'> = {
  minutes: () => 1,
  refuse: (world) => onFoot(world),
  apply: (world) => {
    const aloft = standHere(world)?.aloft !== null;
    const result = aloft ? 'you are still aloft' : 'all on the ground and clear';
    const test = { on: 'site', test: everyoneClearTest, result, sign: null, minute: world.clock.minute };
    return outcome({ ...world, knowledge: { ...world.knowledge, tests: [...world.knowledge.tests, test] } }, [
      event('said', null, `You call everyone clear: ${result}.`),
    ]);
  },
  offers: () => [{ act: { act: 'everyone-clear' }, label: 'Call everyone clear of the line', by: 'talk', about: null }],
};
