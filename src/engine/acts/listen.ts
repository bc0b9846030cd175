/** Standing still and listening for a minute. */
import { type ActKind, outcome } from './kind.ts';
import { hear } from './perceive.ts';
import { onFoot } from './presence.ts';

export const listen: ActKind<'listen'> = {
  minutes: () => 1,
  refuse: (world) => onFoot(world),
  apply: (world) => {
    const { world: after, events } = hear(world, 'all');
    return outcome(after, events);
  },
  offers: () => [{ act: { act: 'listen' }, label: 'Stand still and listen', by: 'eyes', about: null }],
};
