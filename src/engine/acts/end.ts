/** The two ways to end a drill: hand the place over, or close the call out. Neither asks for anything first. */
import { type ActKind, event, outcome } from './kind.ts';

export const handOver: ActKind<'hand-over'> = {
  minutes: () => 2,
  refuse: () => null,
  apply: (world) =>
    outcome({ ...world, ended: 'handed-over' }, [
      event(
        'said',
        'dispatcher',
        'You stop here and hand the place over. The dispatcher writes down what you reported.',
      ),
    ]),
  offers: () => [{ act: { act: 'hand-over' }, label: 'Stop work and hand over', by: 'radio', about: null }],
};

export const closeOut: ActKind<'close-out'> = {
  minutes: () => 2,
  refuse: () => null,
  apply: (world) =>
    outcome({ ...world, ended: 'closed-out' }, [
      event('said', 'dispatcher', 'You close the call out. The dispatcher reads the ticket number back.'),
    ]),
  offers: () => [{ act: { act: 'close-out' }, label: 'Close the call out', by: 'radio', about: null }],
};
